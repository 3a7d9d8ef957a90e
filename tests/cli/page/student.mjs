// A student in front of the page: a browser of their own, with nothing stored and no network. It is Debian's Chromium,
// or what CHROMIUM in the environment names.
import assert from 'node:assert/strict';
import path from 'node:path';
import {pathToFileURL} from 'node:url';

import {chromium} from 'playwright-core';

const options = {
  executablePath: process.env.CHROMIUM || '/usr/bin/chromium', headless: true,
  args: ['--no-sandbox', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
};

export class Student {
  constructor(context, page, requests, complaints) {
    Object.assign(this, {context, page, requests, complaints});
  }
  static async sits(profile, more = {}) {
    const context = await chromium.launchPersistentContext(profile, {
      ...options, viewport: more.viewport || {width: 1366, height: 768}, deviceScaleFactor: more.ratio || 1,
      hasTouch: Boolean(more.touch), acceptDownloads: true});
    await context.setOffline(!more.online);
    if (more.before) await context.addInitScript(more.before);
    const page = context.pages()[0] || await context.newPage();
    const requests = [], complaints = [];
    page.on('request', (request) => requests.push(request.url()));
    // What the page's policy stopped never left it.
    page.on('requestfailed', (request) => {
      if (/csp/i.test(request.failure().errorText)) requests.splice(requests.indexOf(request.url()), 1);
    });
    page.on('pageerror', (error) => complaints.push(String(error)));
    page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
    return new Student(context, page, requests, complaints);
  }
  async opens(file, hash = '') { await this.goesTo(pathToFileURL(file).href + hash); }
  async goesTo(address) {
    await this.page.goto(address, {waitUntil: 'commit'});
    await this.starts();
  }
  async starts() {
    await this.page.waitForFunction(() => window.foldwright && window.foldwright.isReady(), null, {timeout: 60000});
    await this.rests();
  }
  async reloads() {
    await this.page.reload({waitUntil: 'commit'});
    await this.starts();
  }
  // Until all that was done has been drawn and nothing moves.
  async rests() {
    await this.page.waitForFunction(() => window.foldwright.rests(), null, {timeout: 30000});
  }
  items() { return this.page.evaluate(() => window.foldwright.items()); }
  async item(id, number = 0) {
    const found = (await this.items()).find((item) => item.id === id && item.item === number);
    assert.ok(found, `no ${id} on the screen`);
    return found;
  }
  async middle(id, number = 0) {
    const item = await this.item(id, number);
    const box = await this.page.locator('#canvas').boundingBox();
    return {x: box.x + item.x + item.w / 2, y: box.y + item.y + item.h / 2};
  }
  async clicks(id, number = 0) {
    const at = await this.middle(id, number);
    await this.page.mouse.click(at.x, at.y);
    await this.rests();
  }
  async presses(key) {
    await this.page.keyboard.press(key);
    await this.rests();
  }
  async words() { return (await this.items()).map((item) => item.text).join(' | '); }
  async picture(name) {
    if (Student.pictures) await this.page.screenshot({path: path.join(Student.pictures, name + '.png')});
  }
  // By the words alone, as a screen reader does: nothing is known of where it stands on the screen.
  spoken(role, name) {
    return this.page.locator('#mirror').getByRole(role, {name, exact: typeof name === 'string'}).first();
  }
  async uses(role, name) {
    await this.spoken(role, name).dispatchEvent('click');
    await this.rests();
  }
  async hears() { return this.page.locator('#mirror').innerText(); }
  stored(name) { return this.page.evaluate((key) => localStorage.getItem('foldwright/' + key), name); }
  // `from`: the only server that the page may have asked for something.
  async leaves({complains = false, from = 'data:'} = {}) {
    await this.context.close();
    if (!complains) assert.deepEqual(this.complaints, []);
    const strange = this.requests.filter((url) => !/^(file|data|blob):/.test(url) && !url.startsWith(from));
    assert.deepEqual(strange, [], 'nothing leaves the page');
  }
}
