// What a tablet is and how it is tapped: its true size, taps as quick as hands are, and what it is set to for
// everything.
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {Glass, lying, serve, until} from './glass.mjs';
import {deeds_of, folder, world_of} from './hand.mjs';
import {fixed_world} from './page_hooks.mjs';
import {tap_quickly, two_pads} from './rate.mjs';

const world = {wall_ms: Date.UTC(2026, 10, 20, 13), run_ms: 0};
const put_on = (glass, ms) => glass.page.evaluate((by) => {
  window.slabsideClock.wall_ms += by;
  window.slabsideClock.run_ms += by;
}, ms);
async function press_pad(glass, pad) {
  await put_on(glass, 1000);
  await glass.press_pad(pad);
}
async function opened(t, {before = [], prepare = () => {}, size = lying} = {}) {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const glass = await Glass.open(t, folder(t), {size, timezone: 'UTC', before: [[fixed_world, world], ...before]});
  await prepare(glass);
  await glass.visit(site.url);
  await glass.rest();
  return glass;
}

test('a tablet that is known by its sides has its true size, either way up; another is guessed', async (t) => {
  const sizes = {'1180 x 820': [227, 158], '820 x 1180': [158, 227], '1133 x 744': [177, 116], '1024 x 768': [163, 122]};
  for (const [sides, [w, h]] of Object.entries(sizes)) {
    const [width, height] = sides.split(' x ').map(Number);
    const glass = await opened(t, {prepare: ({cdp}) => cdp.send('Emulation.setDeviceMetricsOverride', {
      width, height, screenWidth: width, screenHeight: height, deviceScaleFactor: 2, mobile: true})});
    await press_pad(glass, 'tablet');
    await glass.said_at('#beside', (said) => said.includes(`taken for ${w} × ${h} mm`));
    await glass.close();
  }
});

// As a tablet's keyboard does it, which no driver can call up: what is seen becomes less high, and says so.
function own_keyboard() {
  const view = new EventTarget();
  Object.defineProperties(view, {offsetTop: {value: 0, writable: true}, height: {get: () => window.slabsideSeen ?? innerHeight}});
  Object.defineProperty(window, 'visualViewport', {value: view});
}
const box_of = (glass, pad) => glass.page.evaluate((id) => {
  const {top, bottom, left, right} = document.querySelector(`#pads button[data-pad="${id}"]`).getBoundingClientRect();
  return {top, bottom, at: [(left + right) / 2, (top + bottom) / 2]};
}, pad);
const seen_is = (glass, high) => glass.page.evaluate((px) => {
  window.slabsideSeen = px;
  visualViewport.dispatchEvent(new Event('resize'));
}, high);

test('a keyboard that comes up does not cover the field, and what is tapped then is what is seen', async (t) => {
  const glass = await opened(t, {before: [[own_keyboard]]});
  for (const pad of ['plan', 'pigment pb29']) await press_pad(glass, pad);
  const field = await box_of(glass, 'name');
  await put_on(glass, 1000);
  await glass.tap(field.at);
  assert.equal(await glass.page.evaluate(() => document.activeElement.id), 'typed', 'it is there when the finger is lifted');
  const seen = Math.round(field.top + 10); // the keyboard lies over most of it
  await seen_is(glass, seen);
  const moved = await box_of(glass, 'name');
  assert.ok(moved.bottom <= seen && moved.top >= 0, JSON.stringify({field, moved, seen}));
  const canvas = await glass.page.evaluate(() => document.getElementById('canvas').getBoundingClientRect().top);
  assert.equal(canvas, moved.top - field.top, 'canvas and buttons move together');
  await glass.page.keyboard.insertText('Blue');
  await glass.rest();
  await put_on(glass, 1000);
  await glass.tap((await box_of(glass, 'weigh')).at); // as it lies now
  await glass.rest();
  await seen_is(glass, null);
  await until(async () => (await glass.pads()).some(({id}) => id === 'digit 1'), () => 'another pad was tapped');
  assert.deepEqual((await box_of(glass, 'name')).top, field.top, 'it lies where it lay');
  await glass.close();
});

test('turned while a field is written in, the field is in sight again', async (t) => {
  const glass = await opened(t, {before: [[own_keyboard]]});
  for (const pad of ['plan', 'pigment pb29']) await press_pad(glass, pad);
  await put_on(glass, 1000);
  await glass.tap((await box_of(glass, 'name')).at);
  for (const [width, height, seen] of [[800, 1280, 500], [1280, 800, 400]]) {
    await glass.page.setViewportSize({width, height});
    await seen_is(glass, seen);
    await until(async () => {
      const {top, bottom} = await box_of(glass, 'name');
      return top >= 0 && bottom <= seen;
    }, () => `the field is not in sight at ${width} x ${height}`);
  }
  await glass.close();
});

test('taps as quick as hands are, on two pads: all count, in their order', async (t) => {
  const hand = deeds_of(two_pads(lying), folder(t)), {wall_ms, run_ms} = world_of(hand);
  const glass = await opened(t, {before: [[fixed_world, {wall_ms, run_ms}]]});
  await tap_quickly(glass, hand);
  assert.deepEqual(glass.said, []);
  await glass.close();
});

// Whoever asks WebGL for its state waits until all that was sent is drawn.
function count_questions() {
  window.slabsideAsked = [];
  const ask = WebGL2RenderingContext.prototype.getParameter;
  WebGL2RenderingContext.prototype.getParameter = function (name) {
    window.slabsideAsked.push(name);
    return ask.call(this, name);
  };
}

test('from the second picture on nothing is asked of the display, also where it was lost meanwhile', async (t) => {
  const glass = await opened(t, {before: [[count_questions]]});
  const asked = () => glass.page.evaluate(() => window.slabsideAsked.splice(0));
  assert.ok((await asked()).length > 0);
  for (const pad of ['plan', 'pigment pb29']) await press_pad(glass, pad);
  const picture = () => glass.page.screenshot();
  const before = await picture();
  await glass.page.evaluate(async () => {
    const canvas = document.getElementById('canvas'), its = canvas.getContext('webgl2').getExtension('WEBGL_lose_context');
    const restored = new Promise((done) => canvas.addEventListener('webglcontextrestored', done, {once: true}));
    its.loseContext();
    await new Promise((later) => setTimeout(later, 0));
    its.restoreContext();
    await restored;
  });
  await glass.rest();
  assert.deepEqual(await picture(), before);
  for (const pad of ['today', 'book', 'plan']) await press_pad(glass, pad);
  assert.deepEqual(await asked(), []);
  await glass.close();
});

test('dark and with less motion, where the tablet is set so; what is chosen here counts from then on', async (t) => {
  const night = (glass) => glass.page.evaluate(() => document.body.classList.contains('night'));
  const motion = async (glass) => { await press_pad(glass, 'tablet'); return glass.name_of('motion'); };
  const plain = await opened(t);
  assert.equal(await night(plain), false);
  assert.equal(await motion(plain), 'smooth motion: on');
  await plain.close();
  const dark = await opened(t, {
    prepare: ({page}) => page.emulateMedia({colorScheme: 'dark', reducedMotion: 'reduce'})});
  assert.equal(await night(dark), true);
  assert.equal(await motion(dark), 'smooth motion: off');
  await press_pad(dark, 'motion');
  await dark.page.reload();
  await dark.ready();
  assert.equal(await motion(dark), 'smooth motion: on');
  await dark.close();
});
