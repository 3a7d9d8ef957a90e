// The screen in words: what a screen reader reads, and a lesson worked by it alone.
import assert from 'node:assert/strict';
import fs from 'node:fs';
import {createRequire} from 'node:module';

import {pageFile, shared, test} from './classroom.mjs';
import {Student} from './student.mjs';

const axe = fs.readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

// axe-core is put in by the tests' hand on the browser, which no policy of a page binds.
const checks = async (student, screen) => {
  const cdp = await student.context.newCDPSession(student.page);
  await cdp.send('Runtime.evaluate', {expression: axe + ';0'});
  const found = await student.page.evaluate(() => window.axe.run(document));
  assert.ok(found.passes.length > 10, 'the rules were tried');
  assert.deepEqual(found.violations.map((one) => `${screen}: ${one.id}: ${one.nodes[0].html.slice(0, 200)}`), []);
};

test('the words of each screen keep the rules of access', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(pageFile);
  await checks(student, 'Faces');
  for (const tab of ['Measures', 'Solids', 'Display']) {
    await student.uses('button', tab);
    await checks(student, tab);
  }
  await student.uses('button', 'keys and help');
  await checks(student, 'keys');
  await student.presses('Escape');
  await student.uses('button', 'Work it out');
  await checks(student, 'Work it out');
  await student.uses('button', 'Quiz');
  await checks(student, 'before the quiz');
  await student.uses('button', 'Start');
  await checks(student, 'a question');
  await student.spoken('textbox', /./).fill('1');
  await student.spoken('textbox', /./).press('Enter');
  await student.rests();
  await checks(student, 'a reply');
  await student.uses('button', 'Explore');
  await student.uses('button', 'print');
  assert.match(await student.hears(), /handout/);
  await checks(student, 'printing');
  await student.leaves();
});

test('a lesson is solved by the words alone', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(shared);
  const said = async (pattern) => assert.match(await student.hears(), pattern);
  const answers = async (text) => {
    await student.spoken('textbox', /./).fill(text);
    await student.spoken('textbox', /./).press('Enter');
    await student.rests();
  };
  await said(/Two boxes[^]*How much paper covers the box\?/);
  await student.uses('button', 'count the first face');
  await said(/1 of \? faces/);
  await student.uses('button', 'Quiz');
  await student.uses('button', 'Start');
  await said(/How much paper covers the box\?/);
  await answers('60');
  await said(/You wrote 60\. Not yet\.[^]*Surface area is the wrapping paper/);
  const wrong = JSON.parse(await student.stored('progress.json'));
  assert.equal(wrong.skills.surface.seen, 1);
  assert.equal(wrong.skills.surface.right, 0);
  await student.picture('quiz-wrong-1366x768');
  await student.uses('button', /next/);
  await said(/How much fits in the cube\?/);
  await answers('64 in^3');
  const right = JSON.parse(await student.stored('progress.json'));
  assert.equal(right.skills.volume.right, 1, JSON.stringify(right));
  await student.picture('quiz-right-1366x768');
  await student.leaves();
});

test('what is scrolled away is reached by its name', async (profile) => {
  const student = await Student.sits(profile);
  await student.opens(pageFile);
  await student.page.locator('#mirror').getByRole('button', {name: '29', exact: true}).first().dispatchEvent('click');
  await student.rests();
  assert.match(await student.words(), /29 of 29/);
  await student.leaves();
});
