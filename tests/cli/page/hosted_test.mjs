// The folder form, from a web server on this machine: once it was opened it opens again without one.
import assert from 'node:assert/strict';
import fs from 'node:fs';
import http from 'node:http';
import path from 'node:path';
import {pathToFileURL} from 'node:url';

import {folder, pageFile, test} from './classroom.mjs';
import {Student} from './student.mjs';

const hosted = path.resolve(path.dirname(pageFile), 'foldwright');
const types = {'.html': 'text/html', '.js': 'text/javascript', '.webmanifest': 'application/manifest+json'};

// A server as plain as they come: it doesn't know what a .wasm is.
const serve = (asked) => new Promise((started) => {
  const server = http.createServer((request, response) => {
    const name = request.url.replace(/[?#].*$/, '').replace(/\/$/, '/index.html').replace(/^\/school/, '');
    const file = path.join(hosted, path.basename(name));
    asked.push(request.url);
    if (!request.url.startsWith('/school/') || !fs.existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {'Content-Type': types[path.extname(file)] || 'application/octet-stream'});
    response.end(fs.readFileSync(file));
  }).listen(0, '127.0.0.1', () => started(server));
});

test('a hosted folder opens again without its server, and saves itself as a page', async (profile) => {
  const asked = [];
  const server = await serve(asked);
  const origin = `http://127.0.0.1:${server.address().port}`;
  const student = await Student.sits(profile, {online: true});
  await student.goesTo(origin + '/school/');
  assert.match(await student.words(), /1 of 29/);
  await student.page.evaluate(() => navigator.serviceWorker.ready);
  await student.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await student.clicks('lesson_on');
  await student.page.waitForFunction(() => localStorage.getItem('foldwright/place.json') !== null);
  assert.deepEqual(asked.filter((url) => !url.startsWith('/school/')), [], 'only its own folder is asked for');

  server.closeAllConnections();
  await new Promise((closed) => server.close(closed));
  await student.reloads();
  assert.match(await student.words(), /1 of \? faces/, 'the place is kept, without the server');

  const [download] = await Promise.all([student.page.waitForEvent('download'), student.page.click('#share')]);
  const saved = path.join(folder, 'from-folder.html');
  await download.saveAs(saved);
  await student.leaves({from: origin});
  const alone = await Student.sits(profile + '-alone');
  await alone.opens(saved);
  assert.match(await alone.words(), /1 of 29/);
  await alone.leaves();
});

test('a hosted folder says what to open where there is no server', async (profile) => {
  const student = await Student.sits(profile);
  await student.page.goto(pathToFileURL(path.join(hosted, 'index.html')).href);
  await student.page.getByRole('alert').waitFor();
  assert.match(await student.page.getByRole('alert').innerText(), /From a disk, open foldwright\.html instead/);
  await student.leaves({complains: true});
});
