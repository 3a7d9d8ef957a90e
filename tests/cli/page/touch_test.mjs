// Fingers, and small screens.
import assert from 'node:assert/strict';

import {shared, test} from './classroom.mjs';
import {Student} from './student.mjs';

test('a finger taps and turns, and the first one of a pinch is no tap', async (profile) => {
  const student = await Student.sits(profile, {touch: true, viewport: {width: 1024, height: 768}, ratio: 2});
  await student.opens(shared);
  const at = await student.middle('lesson_on');
  await student.page.touchscreen.tap(at.x, at.y);
  await student.rests();
  assert.match(await student.words(), /1 of \? faces/);
  const cdp = await student.context.newCDPSession(student.page);
  const touch = (type, ...points) => cdp.send('Input.dispatchTouchEvent', {
    type, touchPoints: points.map(([x, y], id) => ({x, y, id}))});
  await touch('touchStart', [at.x, at.y]);
  await touch('touchStart', [at.x, at.y], [at.x - 200, at.y - 200]);
  for (let i = 1; i < 6; ++i) await touch('touchMove', [at.x, at.y], [at.x - 200 - 20 * i, at.y - 200 - 20 * i]);
  await touch('touchEnd');
  await student.rests();
  assert.match(await student.words(), /1 of \? faces/, 'a pinch that begins on the button does not press it');

  const bench = await student.middle('bench');
  const picture = async () => (await student.page.screenshot({clip: {
    x: bench.x - 150, y: bench.y - 150, width: 300, height: 300}})).toString('base64');
  const before = await picture();
  await touch('touchStart', [bench.x, bench.y]);
  for (let i = 1; i < 6; ++i) await touch('touchMove', [bench.x + 30 * i, bench.y]);
  await touch('touchEnd');
  await student.rests();
  const turned = await picture();
  assert.notEqual(turned, before, 'one finger turns');
  await touch('touchStart', [bench.x - 40, bench.y], [bench.x + 40, bench.y]);
  for (let i = 5; i < 12; ++i) await touch('touchMove', [bench.x - 10 * i, bench.y], [bench.x + 10 * i, bench.y]);
  await touch('touchEnd');
  await student.rests();
  assert.notEqual(await picture(), turned, 'two fingers zoom');
  assert.match(await student.words(), /1 of \? faces/, 'and nothing is counted by it');
  await student.picture('touch-1024x768');
  await student.leaves();
});

test('small screens show the lesson, with targets for a finger', async (profile) => {
  for (const [width, height, ratio] of [[1280, 720, 1], [768, 1024, 2], [360, 740, 2], [1366, 768, 2]]) {
    const student = await Student.sits(`${profile}-${width}`, {viewport: {width, height}, ratio, touch: ratio === 2});
    await student.opens(shared);
    assert.match(await student.words(), /How much paper/);
    await student.picture(`shared-${width}x${height}-${ratio}`);
    const canvas = await student.page.locator('#canvas').boundingBox();
    assert.ok(canvas.height > 0.85 * height, `the lesson has the screen: ${canvas.height} of ${height}`);
    const slider = await student.item('fold_slider');
    assert.ok(slider.w > 80, `a finger can set how far the net is open: ${slider.w}`);
    const on = await student.item('lesson_on');
    assert.ok(on.h >= 24 && on.w >= 24, `${on.w} x ${on.h}`);  // the least of WCAG 2.2, success criterion 2.5.8
    await student.leaves();
  }
});
