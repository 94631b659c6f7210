// Letters of every script: what the sentences are made of comes with the page, the faces for all other
// letters when one is met, and they stay.
import assert from 'node:assert/strict';
import {cpSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {test} from 'node:test';
import {Glass, patiently, serve, until} from './glass.mjs';
import {folder} from './hand.mjs';
import {fixed_world} from './page_hooks.mjs';
import {deploy, version} from './page_parts.mjs';

const world = {wall_ms: Date.UTC(2026, 10, 20, 13), run_ms: 0};
const cyrillic = 'Пёстрая', as_many = 'Зимняяя', czech = 'Žďár', as_many_czech = 'Řeřř';

// What is asked of the server goes into `asked`; where `refused.all` is true the other faces cannot be had.
async function opened(t, web = process.env.SLABSIDE_WEB) {
  const asked = [], refused = {all: false};
  const give = (path) => (request, answer) => {
    asked.push(path);
    if (refused.all) return answer.writeHead(503).end();
    answer.writeHead(200, {'Content-Type': 'font/ttf'}).end(readFileSync(join(web, path)));
  };
  const others_alone = {get: (_, path) => (path.includes('/face-other') ? give(path) : undefined)};
  const site = await serve(web, new Proxy({}, others_alone));
  t.after(site.close);
  const glass = await Glass.open(t, folder(t), {timezone: 'UTC', before: [[fixed_world, world]]});
  await glass.visit(site.url);
  await glass.rest();
  return {glass, site, refused, others: () => [...asked]};
}

async function press_pad(glass, pad) {
  await glass.page.evaluate(() => { window.slabsideClock.run_ms += 1000; });
  await glass.press_pad(pad);
}
async function to_the_plan(glass) {
  for (const pad of ['plan', 'pigment pb29']) await press_pad(glass, pad);
}
async function name_it(glass, name) {
  await press_pad(glass, 'name');
  await glass.page.waitForSelector('#typed:focus', {state: 'attached'});
  await glass.page.keyboard.press('Control+a');
  await glass.rest();
  await glass.page.keyboard.insertText(name);
  await glass.rest();
}
// As the glass shows it, in the field.
async function written(glass, name) {
  await name_it(glass, name);
  const clip = await glass.page.evaluate(() => {
    const {x, y, width, height} = document.querySelector('#pads button[data-pad="name"]').getBoundingClientRect();
    return {x, y, width, height};
  });
  return (await glass.page.screenshot({clip})).toString('base64');
}
const came = (glass) => until(async () => {
  await glass.rest();
  return glass.page.evaluate(() => Slabside.faces.of(0, 1) !== undefined && Slabside.faces.of(1, 1) !== undefined);
}, () => 'the other faces do not come');
async function faces_come(glass, name) {
  await name_it(glass, name);
  await came(glass);
}

test('whoever writes no other letter fetches no other face', async (t) => {
  const {glass, others} = await opened(t);
  await to_the_plan(glass);
  await name_it(glass, 'Fensterblau für Ærø');
  for (const pad of ['shelf', 'pans', 'book', 'tablet', 'today']) await press_pad(glass, pad);
  assert.deepEqual(others(), []);
  assert.deepEqual(glass.said, []);
  await glass.close();
});

test('a name in another script fetches both faces once, and is drawn in them', async (t) => {
  const {glass, others} = await opened(t);
  await to_the_plan(glass);
  await faces_come(glass, cyrillic);
  for (const [one, other] of [[cyrillic, as_many], [czech, as_many_czech]])
    assert.notEqual(await written(glass, one), await written(glass, other));
  assert.deepEqual(others().map((place) => place.split('/').pop()).sort(), ['face-other-bold.ttf', 'face-other.ttf']);
  assert.deepEqual(glass.said, []);
  await glass.close();
});

test('without a network a letter is a box; with one again, itself', async (t) => {
  const {glass, refused, others} = await opened(t);
  refused.all = true;
  await to_the_plan(glass);
  const boxes = await written(glass, cyrillic);
  assert.equal(await written(glass, as_many), boxes);
  assert.notEqual(await written(glass, cyrillic.slice(1)), boxes, 'a box for each');
  assert.equal(others().length, 2, 'they are asked for once');
  refused.all = false;
  await glass.page.evaluate(() => { window.dispatchEvent(new Event('online')); });
  await came(glass);
  const letters = await written(glass, cyrillic);
  assert.notEqual(letters, boxes);
  assert.notEqual(letters, await written(glass, as_many));
  assert.equal(others().length, 4);
  await glass.close();
});

const is_kept = (glass, name) => glass.page.evaluate(async (of_version) => {
  const cache = await caches.open(`slabside-${of_version}`);
  const all = await Promise.all(['face-other.ttf', 'face-other-bold.ttf'].map((file) => cache.match(`${of_version}/${file}`)));
  return all.every((answer) => answer?.ok);
}, name);

test('what was fetched once is there without a network', async (t) => {
  const {glass, site} = await opened(t);
  await patiently(glass.page.evaluate(() => navigator.serviceWorker.ready), 'the worker is not ready');
  await to_the_plan(glass);
  await faces_come(glass, cyrillic);
  const letters = await written(glass, cyrillic);
  await site.close();
  await glass.page.reload();
  await glass.ready();
  await glass.rest();
  await to_the_plan(glass);
  await faces_come(glass, cyrillic);
  assert.equal(await written(glass, cyrillic), letters);
  await glass.close();
});

test('a tablet that has wanted them gets them with a new version, another does not', async (t) => {
  for (const wanted of [true, false]) {
    const web = join(folder(t), 'web');
    cpSync(process.env.SLABSIDE_WEB, web, {recursive: true});
    const {glass} = await opened(t, web);
    await until(() => glass.page.evaluate(() => navigator.serviceWorker.controller !== null), // it has cleared up
                () => 'no worker takes the page');
    await to_the_plan(glass);
    if (wanted) await faces_come(glass, cyrillic);
    assert.equal(await is_kept(glass, version), wanted);
    const next = deploy(web);
    await until(() => glass.page.evaluate(async (name) => { // looked for whenever the page comes into sight
      document.dispatchEvent(new Event('visibilitychange'));
      const {installing} = await navigator.serviceWorker.getRegistration();
      return installing === null && await caches.has(name);
    }, `slabside-${next}`), () => 'the new version is not found');
    assert.equal(await is_kept(glass, next), wanted);
    await glass.close();
  }
});
