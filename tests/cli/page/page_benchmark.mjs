// What the page costs: node page_benchmark.mjs PAGE, in the place of page_test.mjs. Prints the figures of DEVELOPERS.md; run
// it on a machine that does nothing else.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import {pathToFileURL} from 'node:url';
import zlib from 'node:zlib';

import {Student} from './student.mjs';

const pageFile = process.argv[2];
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'foldwright-benchmark-'));
let profiles = 0;
const sits = () => Student.sits(path.join(folder, 'profile-' + ++profiles));
const median = (all) => all.sort((a, b) => a - b)[Math.floor(all.length / 2)];

// Milliseconds until the first frame is drawn, with a processor so many times slower; the browser is open already.
const start = async (slower) => {
  const student = await sits();
  await student.page.goto('about:blank');
  const devtools = await student.context.newCDPSession(student.page);
  await devtools.send('Emulation.setCPUThrottlingRate', {rate: slower});
  await student.page.addInitScript(() => {
    const look = () => (window.foldwright && window.foldwright.isReady() ? window.firstFrame = performance.now()
      : requestAnimationFrame(look));
    look();
  });
  await student.page.goto(pathToFileURL(pageFile).href, {waitUntil: 'commit'});
  await student.page.waitForFunction(() => window.firstFrame, null, {timeout: 120000});
  const took = await student.page.evaluate(() => window.firstFrame);
  await student.leaves();
  return took;
};

// Milliseconds a frame while a net opens, and the memory of the program and of the page.
const fold = async (times) => {
  const student = await sits();
  await student.opens(pageFile);
  const took = [];
  for (let i = 0; i < times; ++i) {
    const before = await student.page.evaluate(() => ({frames: foldwright.frames(), at: performance.now()}));
    await student.clicks('fold_play');
    const after = await student.page.evaluate(() => ({frames: foldwright.frames(), at: performance.now()}));
    took.push((after.at - before.at) / (after.frames - before.frames));
  }
  const heap = await student.page.evaluate(() => performance.memory.usedJSHeapSize);
  await student.leaves();
  return {frame: median(took), heap};
};

const bytes = fs.readFileSync(pageFile);
console.log(`page: ${bytes.length} bytes, gzipped ${zlib.gzipSync(bytes, {level: 9}).length}`);
for (const slower of [1, 4]) {
  const all = [];
  for (let i = 0; i < 5; ++i) all.push(await start(slower));
  console.log(`first frame, processor ${slower} times slower: ${median(all).toFixed(0)} ms (median of 5)`);
}
const folding = await fold(6);
console.log(`a frame of a fold: ${folding.frame.toFixed(1)} ms; memory of its scripts ${(folding.heap / 1e6).toFixed(0)} MB`);
fs.rmSync(folder, {recursive: true, force: true});
