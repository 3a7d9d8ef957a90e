// The page is the same program: its build and the desktop's say the same bytes of the demo lessons and of new problems.
import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import path from 'node:path';

import {pageFile, program, test} from './classroom.mjs';

test('both builds say the same', async () => {
  const most = {maxBuffer: 2 ** 28};
  const native = execFileSync(path.join(path.dirname(program), 'foldwright_said'), most);
  // Emscripten 3.1.6 takes node's fetch for a browser's.
  const script = path.join(path.dirname(pageFile), 'foldwright_said.js');
  const wasm = execFileSync(process.execPath, ['--no-experimental-fetch', script], most);
  console.log(`   ${native.length} bytes said`);
  assert.ok(native.length > 1e6, 'all is said');
  const at = native.findIndex((byte, i) => byte !== wasm[i]);
  const near = (bytes) => bytes.subarray(Math.max(at - 200, 0), at + 100).toString();
  assert.equal(at, -1, `from byte ${at} on: ${near(native)}\n--- not ---\n${near(wasm)}`);
  assert.equal(native.length, wasm.length);
});
