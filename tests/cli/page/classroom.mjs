// What the tests of the page share: the lessons that students open, and how the tests are run.
import {execFileSync} from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

export const [program, pageFile, pictures] = process.argv.slice(2);
export const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'foldwright-page-'));

// A lesson that is not the demo's, as its author writes it and as a student gets it.
const boxes = {
  lesson: 1, title: 'Two boxes', problems: [
    {id: 'box', prompt: 'How much paper covers the box?', find: ['surface_area'],
      solid: {kind: 'rectangular prism', length: '5 in', width: '4 in', height: '3 in'}},
    {id: 'cube', prompt: 'How much fits in the cube?', find: ['volume'], solid: {kind: 'cube', edge: '4 in'}}],
};
export const lessonFile = path.join(folder, 'boxes.json');
export const shared = path.join(folder, 'boxes.html');
fs.writeFileSync(lessonFile, JSON.stringify(boxes));
execFileSync(program, ['share', lessonFile, '--page', pageFile, '-o', shared]);

const tests = [];
// `run` gets a folder of its own for what the browser stores.
export const test = (name, run) => tests.push({name, run});

// Runs those whose name has the word in it. Returns how many failed.
export const runTests = async (word) => {
  const chosen = tests.filter((one) => one.name.includes(word));
  let failed = 0;
  for (const [number, {name, run}] of chosen.entries()) {
    const begin = Date.now();
    try {
      await run(path.join(folder, 'profile-' + number));
      console.log(`ok  ${name} (${((Date.now() - begin) / 1000).toFixed(1)} s)`);
    } catch (error) {
      ++failed;
      console.log('NOT OK  ' + name + '\n' + (error.stack || error));
    }
  }
  fs.rmSync(folder, {recursive: true, force: true});
  console.log(`${chosen.length - failed} of ${chosen.length} tests of the page passed`);
  return failed;
};
