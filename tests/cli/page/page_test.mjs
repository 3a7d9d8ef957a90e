// The page in a real browser, from a disk and without a network: node page_test.mjs PROGRAM PAGE [PICTURES] [WORD]
//
// PROGRAM is foldwright, PAGE its foldwright.html; beside each lies foldwright_said of the same build. Needs Debian's
// chromium, and the packages of package-lock.json beside this file. With PICTURES, a folder, what the screens look like
// is put there; with WORD, only the tests that have it in their names are run.
import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import zlib from 'node:zlib';

import {folder, pageFile, pictures, runTests, shared, test} from './classroom.mjs';
import './hosted_test.mjs';
import './keeping_test.mjs';
import './same_test.mjs';
import {Student} from './student.mjs';
import './touch_test.mjs';
import './words_test.mjs';

Student.pictures = pictures;

test('opens from a disk without a network, and rests', async (profile) => {
  const bytes = fs.readFileSync(pageFile);
  const small = zlib.gzipSync(bytes, {level: 9}).length;
  console.log(`   the page: ${bytes.length} bytes, gzipped ${small}`);
  assert.ok(bytes.length < 3e6, 'the page stays under 3 MB');
  const student = await Student.sits(profile);
  await student.opens(pageFile);
  await student.picture('demo-1366x768');
  const before = await student.page.evaluate(() => window.foldwright.frames());
  await student.page.waitForTimeout(3000);
  assert.equal(await student.page.evaluate(() => window.foldwright.frames()), before, '0 frames while nothing changes');
  await student.leaves();
});

test('asks for nothing from outside, and its policy would not let it', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(pageFile);
  const fetched = await student.page.evaluate(async () => {
    const ways = {
      fetch: () => fetch('http://127.0.0.1:9/').then(() => true, () => false),
      picture: () => new Promise((done) => {
        const picture = new Image();
        picture.onload = () => done(true);
        picture.onerror = () => done(false);
        picture.src = 'http://127.0.0.1:9/a.png';
      }),
      script: () => new Promise((done) => {
        const script = document.createElement('script');
        script.textContent = 'window.strange = true';
        document.body.append(script);
        done(window.strange === true);
      }),
    };
    const blocked = [];
    document.addEventListener('securitypolicyviolation', (event) => blocked.push(event.effectiveDirective));
    const did = [];
    for (const [name, way] of Object.entries(ways)) {
      if (await way()) did.push(name);
    }
    await new Promise((done) => setTimeout(done, 200));
    return {did, blocked: blocked.sort()};
  });
  assert.deepEqual(fetched, {did: [], blocked: ['connect-src', 'img-src', 'script-src-elem']});
  await student.leaves({complains: true});
});

test('a shared lesson is counted by mouse and by keys, and is there after a reload', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(shared);
  assert.match(await student.words(), /How much paper covers the box\?/);
  await student.clicks('lesson_on');
  assert.match(await student.words(), /1 of \? faces/);
  await student.presses('PageDown');
  assert.match(await student.words(), /2 of \? faces/);
  await student.presses('Control+z');
  assert.match(await student.words(), /1 of \? faces/);
  await student.presses('PageDown');
  await student.picture('counted-1366x768');
  await student.reloads();
  assert.match(await student.words(), /2 of \? faces/, 'closed in the middle, and nothing lost');
  await student.leaves();
  const again = await Student.sits(profile);
  await again.opens(shared);
  assert.match(await again.words(), /2 of \? faces/, 'in a browser that was closed and opened again');
  await again.leaves();
});

test('what belongs to the browser stays the browser\'s', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(shared);
  const taken = await student.page.evaluate(() => {
    const canvas = document.getElementById('canvas');
    const isTaken = (key, code, more = {}) => !canvas.dispatchEvent(
        new KeyboardEvent('keydown', {key, code, bubbles: true, cancelable: true, ...more}));
    return {
      F1: isTaken('F1', 'F1'), F5: isTaken('F5', 'F5'), Space: isTaken(' ', 'Space'),
      Down: isTaken('PageDown', 'PageDown'), F12: isTaken('F12', 'F12'),
      find: isTaken('f', 'KeyF', {ctrlKey: true}), close: isTaken('w', 'KeyW', {ctrlKey: true}),
      larger: isTaken('+', 'Equal', {ctrlKey: true}), back: isTaken('ArrowLeft', 'ArrowLeft', {altKey: true}),
    };
  });
  assert.deepEqual(taken, {F1: true, F5: true, Space: true, Down: true, F12: false, find: false, close: false,
    larger: false, back: false});
  await student.leaves();
});

test('a lost drawing context comes back with nothing lost', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(shared);
  await student.clicks('lesson_on');
  await student.page.evaluate(() => {
    window.lose = document.getElementById('canvas').getContext('webgl2').getExtension('WEBGL_lose_context');
    window.lose.loseContext();
  });
  await student.page.waitForFunction(() => document.getElementById('news').textContent !== '');
  await student.page.evaluate(() => window.lose.restoreContext());
  await student.page.waitForFunction(() => document.getElementById('news').textContent === '');
  await student.rests();
  await student.presses('PageDown');
  assert.match(await student.words(), /2 of \? faces/);
  const colors = await student.page.locator('#canvas').screenshot();
  assert.ok(colors.length > 20000, 'the solid is drawn again');  // a picture of one color has 3,000 bytes
  await student.picture('restored-1366x768');
  await student.leaves();
});

test('without WebGL 2 the page says what to do', async (profile) => {
  const student = await Student.sits(profile, {before: () => {
    const made = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function(kind, ...more) {
      return kind === 'webgl2' ? null : made.call(this, kind, ...more);
    };
  }});
  await student.page.goto('file://' + shared);
  await student.page.getByRole('alert').waitFor();
  assert.match(await student.page.getByRole('alert').innerText(), /doesn't have WebGL 2.*newer browser/s);
  await student.picture('without-webgl');
  await student.leaves();
});

test('a page saves itself with its lesson, and a link holds it', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(shared);
  const [download] = await Promise.all([student.page.waitForEvent('download'), student.page.click('#share')]);
  assert.equal(download.suggestedFilename(), 'two-boxes.html');
  const saved = path.join(folder, 'saved.html');
  await download.saveAs(saved);
  await student.opens(saved);
  assert.match(await student.words(), /How much paper covers the box\?/);
  const link = await student.page.evaluate(async () => {
    let copied = '';
    Object.defineProperty(navigator, 'clipboard', {value: {writeText: async (text) => { copied = text; }}});
    document.getElementById('link').click();
    for (let i = 0; i < 50 && copied === ''; ++i) await new Promise((done) => setTimeout(done, 100));
    return copied;
  });
  const hash = link.slice(link.indexOf('#'));
  console.log(`   the lesson as a link: ${hash.length} characters`);
  await student.page.goto('about:blank');
  await student.opens(pageFile, hash);
  assert.match(await student.words(), /How much paper covers the box\?/);
  await student.page.goto('about:blank');
  await student.opens(pageFile, hash.slice(0, -20));
  assert.match(await student.page.getByRole('alert').innerText(), /This link is not complete/);
  await student.leaves();
});

test('a lesson with a mistake says where it is', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(pageFile);
  const chosen = (text) => student.page.setInputFiles('#file', {
    name: 'lesson.json', mimeType: 'application/json', buffer: Buffer.from(text)});
  await chosen('{"lesson": 1, "title": "T", "problems": [{"id": "a", "solid": {"kind": "cube", "edge": "four"}}]}');
  await student.page.getByRole('alert').waitFor();
  assert.match(await student.page.getByRole('alert').innerText(), /This can\'t be opened.*lesson:1:\d+: /s);
  await student.page.click('#understood');
  assert.match(await student.words(), /1 of 29/, 'what was open stays open');
  await chosen(fs.readFileSync(path.join(folder, 'boxes.json'), 'utf8'));
  await student.page.waitForFunction(() => document.title.startsWith('Two boxes'));
  await student.rests();
  assert.match(await student.words(), /How much paper covers the box\?/);
  await student.leaves();
});

process.exit(await runTests(process.argv[5] || '') === 0 ? 0 : 1);
