// The page's own buttons: found by what they are and what they are called, pressed without a pointer, and
// each tap counted once.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {test} from 'node:test';
import {Glass, kept_until, lying, serve, until, upright} from './glass.mjs';
import {folder} from './hand.mjs';
import {fixed_world} from './page_hooks.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const world = {wall_ms: Date.UTC(2026, 10, 20, 13), run_ms: 0};
const put_on = (glass, ms) => glass.page.evaluate((by) => {
  window.slabsideClock.wall_ms += by;
  window.slabsideClock.run_ms += by;
}, ms);

async function opened(t, size, hooks = []) {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const glass = await Glass.open(t, folder(t), {size, timezone: 'UTC', before: [[fixed_world, world], ...hooks]});
  await glass.visit(site.url);
  await glass.rest();
  return glass;
}
async function press_pad(glass, pad) {
  await put_on(glass, 1000);
  await glass.press_pad(pad);
}
const added = (files) => [...files.values()].flat().filter((line) => JSON.parse(line).e === 'added').length;

// From the plan to the slab, with no pointer.
async function on_the_slab(glass) {
  for (const pad of ['plan', 'pigment pb29', 'weigh', 'digit 1', 'digit 0', 'enter', 'begin']) await press_pad(glass, pad);
}

async function faults_of(glass) {
  await glass.page.evaluate(axe);
  const {violations} = await glass.page.evaluate(() => window.axe.run());
  return violations.map(({id, nodes}) => `${id}: ${nodes.map((node) => node.html).join(' ').slice(0, 300)}`);
}

const description_of = (glass, pad) => glass.page.evaluate((id) =>
  document.querySelector(`#pads button[data-pad="${id}"]`).getAttribute('aria-description'), pad);

async function by_buttons_alone(t, size) {
  const glass = await opened(t, size);
  await on_the_slab(glass);
  const binder = await glass.name_of('add gum_12');
  assert.match(binder, /^Gum/, 'the material comes first');
  const before = added(await kept_until(glass.page, (files) => files.size > 0));
  const nothing = await description_of(glass, 'add gum_12');
  for (let i = 0; i < 20; ++i) await press_pad(glass, 'add gum_12');
  assert.equal(await glass.name_of('add gum_12'), binder, 'what is said once can be said again');
  assert.notEqual(await description_of(glass, 'add gum_12'), nothing);
  await kept_until(glass.page, (files) => added(files) >= before + 20);
  assert.equal(added(await kept_until(glass.page, () => true)), before + 20);
  assert.match(await glass.text('#counted'), /\S/);
  assert.deepEqual(await faults_of(glass), []);
  for (const screen of ['today', 'shelf', 'plan', 'pans', 'book', 'tablet']) {
    await press_pad(glass, screen);
    const pads = await glass.pads();
    for (const {id, name} of pads) assert.ok(name, `${screen}: “${id}” has no name`);
    assert.deepEqual(pads.filter(({current}) => current === 'page').map(({id}) => id), [screen]);
    assert.deepEqual(await faults_of(glass), [], screen);
  }
  await glass.page.evaluate(() => document.getElementById('keeping').click());
  await until(() => glass.page.evaluate(() => document.getElementById('kept-how').textContent !== ''),
              () => 'it does not say what is kept');
  assert.deepEqual(await faults_of(glass), [], 'what is kept');
  assert.deepEqual(glass.said, []);
  await glass.close();
}

test('from the plan to the slab by buttons alone, lying', (t) => by_buttons_alone(t, lying));
test('from the plan to the slab by buttons alone, upright', (t) => by_buttons_alone(t, upright));

test('keys walk from button to button in the order of the pads, and press', async (t) => {
  const glass = await opened(t, lying);
  const focused = () => glass.page.evaluate(() => document.activeElement.dataset?.pad ?? '');
  const pads = (await glass.pads()).map(({id}) => id), walked = [];
  for (let i = 0; i < pads.length; ++i) {
    await glass.page.keyboard.press('Tab');
    walked.push(await focused());
  }
  assert.deepEqual(walked, pads);
  await glass.page.focus('#pads button[data-pad="shelf"]');
  await put_on(glass, 1000);
  await glass.page.keyboard.press('Enter');
  await glass.rest();
  await until(async () => (await glass.pads()).some(({id, current}) => id === 'shelf' && current === 'page'),
              () => 'the key presses nothing');
  assert.equal(await focused(), 'shelf', 'the focus stays where it was');
  await glass.close();
});

// What reads a screen aloud presses the button, and the canvas below it is touched for the same tap.
test('one tap that comes as a touch and as a press counts once', async (t) => {
  const glass = await opened(t, lying);
  await on_the_slab(glass);
  const {x, y} = await glass.page.evaluate(() => {
    const box = document.querySelector('#pads button[data-pad="add gum_12"]').getBoundingClientRect();
    return {x: box.x + box.width / 2, y: box.y + box.height / 2};
  });
  const before = added(await kept_until(glass.page, (files) => files.size > 0));
  for (let i = 1; i <= 3; ++i) {
    await put_on(glass, 1000);
    await glass.tap([x, y]);
    await glass.page.evaluate(() => document.querySelector('#pads button[data-pad="add gum_12"]').click());
    await glass.rest();
    assert.equal(added(await kept_until(glass.page, (files) => added(files) >= before + i)), before + i);
  }
  await glass.close();
});

test('a press by name counts, however long the program takes to draw it', async (t) => {
  const glass = await opened(t, lying);
  await on_the_slab(glass);
  const before = added(await kept_until(glass.page, (files) => files.size > 0));
  await glass.page.evaluate(() => {
    const canvas = document.getElementById('canvas'), gl = canvas.getContext('webgl2') || canvas.getContext('webgl');
    const draw = gl.drawElements;
    gl.drawElements = (...how) => {
      window.slabsideClock.run_ms += 2000;
      window.slabsideClock.wall_ms += 2000;
      return draw.apply(gl, how);
    };
  });
  for (let i = 0; i < 3; ++i) await press_pad(glass, 'add gum_12');
  assert.equal(added(await kept_until(glass.page, (files) => added(files) >= before + 3)), before + 3);
  await glass.close();
});

// A finger that bounces off wet glass comes as soon; what is said or switched does not bounce.
test('presses by name all count, however soon one comes behind the other', async (t) => {
  const glass = await opened(t, lying);
  await on_the_slab(glass);
  const before = added(await kept_until(glass.page, (files) => files.size > 0));
  for (let i = 0; i < 30; ++i) {
    await put_on(glass, 66);
    await glass.press_pad('add gum_12');
  }
  assert.equal(added(await kept_until(glass.page, (files) => added(files) >= before + 30)), before + 30);
  await glass.close();
});

const in_german = () => Object.defineProperty(navigator, 'languages', {get: () => ['de-DE', 'de']});

test('a name is of whole words, wherever its lines break on the glass', async (t) => {
  for (const size of [lying, upright]) {
    const glass = await opened(t, size, [[in_german]]);
    await on_the_slab(glass);
    const names = (await glass.pads()).map(({name}) => name);
    assert.ok(names.some((name) => name.startsWith('Ultramarinblau, ')), names.join('\n'));
    await glass.close();
  }
});

// Fingers made in the page, as wide as they are said to be.
const finger = (glass, type, id, [x, y], width) => glass.page.evaluate(([kind, pointerId, clientX, clientY, wide]) => {
  const canvas = document.getElementById('canvas');
  canvas.setPointerCapture = () => {};
  canvas.dispatchEvent(new PointerEvent(kind, {pointerId, clientX, clientY, width: wide, height: wide,
    pointerType: 'touch', bubbles: true, cancelable: true, isPrimary: pointerId === 1}));
}, [type, id, x, y, width]);

test('a palm is no tap, and a hand that rests blocks nothing for long', async (t) => {
  const glass = await opened(t, lying);
  await on_the_slab(glass);
  const centre = (pad) => glass.page.evaluate((id) => {
    const box = document.querySelector(`#pads button[data-pad="${id}"]`).getBoundingClientRect();
    return [box.x + box.width / 2, box.y + box.height / 2];
  }, pad);
  const gum = await centre('add gum_12'), water = await centre('add water');
  const before = added(await kept_until(glass.page, (files) => files.size > 0));
  const count = async (more) => {
    await glass.rest();
    assert.equal(added(await kept_until(glass.page, (files) => added(files) >= before + more)), before + more);
  };
  await put_on(glass, 1000);
  await finger(glass, 'pointerdown', 1, gum, 120); // a palm, wide from the start
  await put_on(glass, 60);
  await finger(glass, 'pointerup', 1, gum, 120);
  await count(0);
  await put_on(glass, 1000);
  await finger(glass, 'pointerdown', 1, gum, 40); // one that is laid down slowly
  await finger(glass, 'pointermove', 1, gum, 120);
  await put_on(glass, 60);
  await finger(glass, 'pointerup', 1, gum, 120);
  await count(0);
  await put_on(glass, 1000);
  await finger(glass, 'pointerdown', 1, gum, 60); // it rests
  for (let i = 1; i <= 5; ++i) {
    await put_on(glass, 1600);
    await finger(glass, 'pointerdown', 2, water, 60);
    await put_on(glass, 60);
    await finger(glass, 'pointerup', 2, water, 60);
    await count(i);
  }
  await finger(glass, 'pointerup', 1, gum, 60);
  await count(5);
  await glass.close();
});
