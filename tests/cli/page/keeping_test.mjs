// Nothing that was confirmed is lost: pages are loaded anew, closed and crashed, and storage is full, at moments drawn
// by a seed. ROUNDS and SEED in the environment say how many and which.
import assert from 'node:assert/strict';

import {shared, test} from './classroom.mjs';
import {Student} from './student.mjs';

const rounds = Number(process.env.ROUNDS || 30);
const seed = Number(process.env.SEED || 1);

// A generator of Lehmer's with the constants of Park and Miller: the same moments for the same seed.
const drawn = (first) => {
  let state = first;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
};

const fillable = () => {
  const write = Storage.prototype.setItem;
  Storage.prototype.setItem = function(name, text) {
    if (window.isFull) throw new DOMException('full', 'QuotaExceededError');
    write.call(this, name, text);
  };
};

const seenIn = (text) =>
    Object.values(text ? JSON.parse(text).skills : {}).reduce((sum, skill) => sum + skill.seen, 0);

const tellsOfStorage = (student) => student.page.waitForFunction(
    () => /not being saved|not saved/.test(document.getElementById('mirror').textContent));

const isAnswered = (items) => items.some((item) => /^You wrote 1\b/.test(item.text));

// A question to be answered: the quiz is begun anew where it is not going on.
const toQuestion = async (student) => {
  await student.rests();
  for (let i = 0; i < 6; ++i) {
    const items = await student.items();
    const has = (id) => items.some((item) => item.id === id && item.on);
    if (has('answer_field') && !isAnswered(items)) return;
    if (has('go_on')) await student.clicks('go_on');
    else if (has('quiz_start')) {
      await student.clicks('quiz_source', 2);
      await student.clicks('quiz_start');
    } else if (has('results_close')) await student.clicks('results_close');
    else await student.clicks('modes', 2);
  }
  assert.fail('no question: ' + await student.words());
};

test(`${rounds} pages loaded anew, closed, crashed or full lose nothing confirmed`, async (profile) => {
  const draw = drawn(seed);
  const student = await Student.sits(profile, {before: fillable});
  await student.opens(shared);
  let confirmed = 0, given = 0;
  const did = {reload: 0, close: 0, crash: 0, full: 0};
  for (let round = 0; round < rounds; ++round) {
    await toQuestion(student);
    const isFull = draw(4) === 0;
    await student.page.evaluate((on) => { window.isFull = on; }, isFull);
    await student.page.keyboard.type('1');
    await student.page.keyboard.press('Enter');
    ++given;
    await student.page.waitForTimeout(draw(150));
    if (isFull) {
      ++did.full;
      await tellsOfStorage(student);
      await student.page.evaluate(() => { window.isFull = false; });
      if (draw(2) === 0) {  // there is room again: the next answer takes the one before with it
        await toQuestion(student);
        await student.page.keyboard.type('1');
        await student.page.keyboard.press('Enter');
        await student.rests();
        assert.ok(isAnswered(await student.items()));
        ++given;
        confirmed = given;
      } else {
        given = confirmed;  // it was told that this answer is not saved
      }
    } else if (isAnswered(await student.items())) {
      confirmed = given;  // the reply can be read
    }
    const way = ['reload', 'close', 'crash'][draw(3)];
    ++did[way];
    if (way === 'reload') {
      await student.reloads();
    } else {
      const old = student.page;
      student.page = await student.context.newPage();
      if (way === 'close') {
        await old.close();
      } else {
        const cdp = await student.context.newCDPSession(old);
        await Promise.race([cdp.send('Page.crash').catch(() => {}), old.waitForEvent('crash')]);
        await old.close();
      }
      await student.opens(shared);
    }
    const seen = seenIn(await student.stored('progress.json'));
    assert.ok(seen >= confirmed, `round ${round}, ${way}: ${seen} answers are kept, ${confirmed} were confirmed`);
    assert.ok(seen <= given, `round ${round}, ${way}: ${seen} answers are kept, ${given} were given`);
    confirmed = given = seen;
  }
  console.log(`   ${JSON.stringify(did)}, seed ${seed}: ${confirmed} answers kept`);
  await student.leaves();
});

test('storage that is refused is told, and the lesson goes on', async (profile) => {
  const student = await Student.sits(profile, {before: fillable});
  await student.opens(shared);
  await student.page.evaluate(() => { window.isFull = true; });
  await student.clicks('lesson_on');
  await tellsOfStorage(student);
  await student.picture('full-1366x768');
  await student.presses('PageDown');
  assert.match(await student.words(), /2 of \? faces/);
  await student.leaves();
});
