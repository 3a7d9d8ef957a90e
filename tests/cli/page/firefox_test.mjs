// The same page in Firefox: node firefox_test.mjs PROGRAM PAGE [PICTURES], under a display, since WebGL 2 needs one there. It is
// Debian's firefox-esr, or what FIREFOX in the environment names; every address but the disk's is sent where nobody is.
import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import {pathToFileURL} from 'node:url';

import puppeteer from 'puppeteer-core';

import {pageFile, pictures, runTests, shared, test} from './classroom.mjs';

const nowhere = {
  'network.proxy.type': 1, 'network.proxy.http': '127.0.0.1', 'network.proxy.http_port': 9, 'network.proxy.ssl': '127.0.0.1',
  'network.proxy.ssl_port': 9, 'network.proxy.allow_hijacking_localhost': true, 'webgl.force-enabled': true,
  'browser.shell.checkDefaultBrowser': false,
};

class Reader {
  static async sits(profile, viewport = {width: 1366, height: 768}) {
    fs.mkdirSync(profile, {recursive: true});
    const browser = await puppeteer.launch({
      browser: 'firefox', executablePath: process.env.FIREFOX || '/usr/bin/firefox-esr', headless: false,
      userDataDir: profile, extraPrefsFirefox: nowhere, defaultViewport: viewport});
    const page = (await browser.pages())[0] || await browser.newPage();
    await page.setViewport(viewport);
    const complaints = [], requests = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    page.on('request', (request) => requests.push(request.url()));
    return Object.assign(new Reader(), {browser, page, complaints, requests});
  }
  async opens(file) {
    await this.page.goto(pathToFileURL(file).href);
    await this.starts();
  }
  async starts() {
    await this.page.waitForFunction(() => window.foldwright && window.foldwright.isReady(), {timeout: 60000});
    await this.rests();
  }
  rests() { return this.page.waitForFunction(() => window.foldwright.rests(), {timeout: 30000}); }
  words() { return this.page.evaluate(() => window.foldwright.items().map((item) => item.text).join(' | ')); }
  async clicks(id, number = 0) {
    const at = await this.page.evaluate((name, which) => {
      const item = window.foldwright.items().find((one) => one.id === name && one.item === which);
      const box = document.getElementById('canvas').getBoundingClientRect();
      return item && {x: box.x + item.x + item.w / 2, y: box.y + item.y + item.h / 2};
    }, id, number);
    assert.ok(at, `no ${id} on the screen`);
    await this.page.mouse.click(at.x, at.y);
    await this.rests();
  }
  async types(text) {
    await this.page.keyboard.type(text);
    await this.page.keyboard.press('Enter');
    await this.rests();
  }
  async presses(key) {
    await this.page.keyboard.press(key);
    await this.rests();
  }
  async picture(name) {
    if (pictures) await this.page.screenshot({path: path.join(pictures, 'firefox-' + name + '.png')});
  }
  stored(name) { return this.page.evaluate((key) => localStorage.getItem('foldwright/' + key), name); }
  async leaves() {
    await this.browser.close();
    assert.deepEqual(this.complaints, []);
    assert.deepEqual(this.requests.filter((url) => !/^(file|data|blob|about):/.test(url)), [], 'nothing leaves the page');
  }
}

test('a shared lesson is counted by mouse and by keys, and rests', async (profile) => {
  const reader = await Reader.sits(profile);
  await reader.opens(shared);
  assert.match(await reader.words(), /How much paper covers the box\?/);
  await reader.clicks('lesson_on');
  assert.match(await reader.words(), /1 of \? faces/);
  await reader.presses('PageDown');
  assert.match(await reader.words(), /2 of \? faces/);
  await reader.picture('counted-1366x768');
  const before = await reader.page.evaluate(() => window.foldwright.frames());
  await new Promise((done) => setTimeout(done, 2000));
  assert.equal(await reader.page.evaluate(() => window.foldwright.frames()), before, '0 frames while nothing changes');
  await reader.page.reload();
  await reader.starts();
  assert.match(await reader.words(), /2 of \? faces/, 'closed in the middle, and nothing lost');
  await reader.clicks('fold_play');
  await reader.picture('unfolded-1366x768');
  await reader.leaves();
});

test('a quiz is answered wrong and right, and kept in a browser that was closed', async (profile) => {
  const reader = await Reader.sits(profile);
  await reader.opens(shared);
  await reader.clicks('modes', 2);
  await reader.clicks('quiz_start');
  await reader.types('60');
  assert.match(await reader.words(), /You wrote 60\. Not yet\./);
  await reader.picture('wrong-1366x768');
  await reader.types('94 in^2');
  assert.match(await reader.words(), /Right\./);
  const kept = await reader.stored('progress.json');
  assert.equal(JSON.parse(kept).skills.surface.seen, 1);
  await reader.leaves();
  const again = await Reader.sits(profile);
  await again.opens(shared);
  assert.equal(await again.stored('progress.json'), kept);
  await again.leaves();
});

test('small screens show the demo lesson', async (profile) => {
  for (const [width, height] of [[1280, 720], [768, 1024], [360, 740]]) {
    const reader = await Reader.sits(`${profile}-${width}`, {width, height});
    await reader.opens(pageFile);
    assert.match(await reader.words(), /How much paper/);
    await reader.picture(`demo-${width}x${height}`);
    await reader.leaves();
  }
});

process.exit(await runTests(process.argv[5] || '') === 0 ? 0 : 1);
