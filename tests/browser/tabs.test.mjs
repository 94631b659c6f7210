// One tab at a time, a program that breaks down, and a new version: it is
// said, nothing that was saved is lost, and the page goes on.
import assert from 'node:assert/strict';
import {cpSync} from 'node:fs';
import {join} from 'node:path';
import {test} from 'node:test';
import {Glass, kept, kept_until, lying, patiently, serve, until} from './glass.mjs';
import {deeds_of, folder, perform, play, script_for, sessions_in, timezone_of, world_of} from './hand.mjs';
import {fixed_world, trap_on_demand} from './page_hooks.mjs';
import {deploy, say, version} from './page_parts.mjs';

const script = script_for(lying, 'taps_without_end.taps').replace('x400', 'x6');
const sum = (files) => [...files.values()].reduce((all, lines) => all + lines.length, 0);

async function tapped(t, site, hooks = []) {
  const hand = deeds_of(script, folder(t)), computer = folder(t);
  play(script, computer);
  const [[, lines]] = [...sessions_in(computer)];
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]), before: [[fixed_world, world_of(hand)], ...hooks]});
  await glass.visit(site.url);
  await perform(glass, hand);
  await kept_until(glass.page, (files) => sum(files) >= lines.length);
  const again = async () => { // the last tap once more, some seconds later
    await glass.page.evaluate(() => { window.slabsideClock.run_ms += 5000; window.slabsideClock.wall_ms += 5000; });
    for (const deed of hand.deeds.slice(-2)) {
      if (deed.do === 'down') await glass.down(deed.at);
      if (deed.do === 'up') await glass.up();
    }
  };
  return {glass, again};
}

const words_of = (page) => page.evaluate(() => document.getElementById('words').textContent);
const is_ready = (page) => page.evaluate(() => document.body.classList.contains('ready'));
const press_again = (page) => page.evaluate(() => document.getElementById('again').click());
const says = (page, words) => until(async () => await words_of(page) === words, () => `it does not say: ${words}`);

test('in a second tab it is said where the first one is, and it goes on there when asked', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const glass = await Glass.open(t, folder(t));
  await glass.visit(site.url);
  const first = glass.page, second = await first.context().newPage();
  await second.goto(site.url);
  await says(second, say('other_tab'));
  assert.equal(await is_ready(second), false);
  // In the face of the program, and by day as it is.
  assert.equal(await second.evaluate(async () => (await document.fonts.load('18px face')).length), 1);
  assert.equal(await second.evaluate(() => getComputedStyle(document.body).backgroundColor), 'rgb(237, 235, 228)');
  assert.equal(await is_ready(first), true);
  await second.bringToFront(); // what is not in sight draws nothing
  await press_again(second);
  await patiently(second.waitForSelector('body.ready canvas[aria-busy=false]'), 'the second tab does not start');
  await says(first, say('goes_on_elsewhere'));
  assert.equal(await is_ready(first), false);
  await first.bringToFront(); // and back, by one press
  await press_again(first);
  await patiently(first.waitForSelector('body.ready canvas[aria-busy=false]'), 'the first tab does not come back');
  await says(second, say('goes_on_elsewhere'));
  await glass.close();
});

test('when the first tab is closed the second one goes on by itself', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const glass = await Glass.open(t, folder(t));
  await glass.visit(site.url);
  const second = await glass.page.context().newPage();
  await second.goto(site.url);
  await says(second, say('other_tab'));
  await glass.page.close();
  await second.bringToFront();
  await patiently(second.waitForSelector('body.ready canvas[aria-busy=false]'), 'the second tab does not start');
  await glass.close();
});

test('a program that breaks down stops for good, says so, and starts again from what is kept', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const {glass, again} = await tapped(t, site, [[trap_on_demand]]);
  const before = await kept(glass.page);
  await glass.page.evaluate(() => { window.slabsideTraps = true; });
  await again();
  await until(async () => !(await is_ready(glass.page)), () => 'it does not stop');
  assert.match(await words_of(glass.page), /unreachable/);
  // Nothing brings it back: no tap, no look at the page, no time.
  await glass.page.evaluate(() => { window.slabsideTraps = false; });
  await again();
  await glass.page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await glass.page.setViewportSize({width: 1000, height: 700});
  await glass.rest();
  assert.equal(await is_ready(glass.page), false);
  assert.deepEqual(await kept(glass.page), before);
  assert.equal(await glass.text('#again'), say('start_again'));
  await press_again(glass.page);
  await glass.ready();
  await glass.close();
});

test('an error of a script from outside stops nothing, one of the page’s own does', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const glass = await Glass.open(t, folder(t));
  await glass.visit(site.url);
  const heard = glass.page.waitForEvent('pageerror');
  await glass.page.evaluate(() => { setTimeout(() => { throw new Error('not of the page'); }, 0); });
  assert.match(String(await heard), /not of the page/);
  await glass.rest();
  assert.equal(await is_ready(glass.page), true);
  await glass.page.evaluate(() => {
    Slabside.keeping.element = null;
    document.getElementById('keeping').click();
  });
  await until(async () => !(await is_ready(glass.page)), () => 'it does not stop');
  assert.match(await words_of(glass.page), /TypeError/);
  await glass.close();
});

test('a new version is looked for, offered, and taken by a tap, but not in the middle of a batch', async (t) => {
  const web = join(folder(t), 'web');
  cpSync(process.env.SLABSIDE_WEB, web, {recursive: true});
  const site = await serve(web);
  t.after(site.close);
  const hand = deeds_of(script, folder(t));
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]), before: [[fixed_world, world_of(hand)]]});
  await glass.visit(site.url);
  const in_force = () => glass.page.evaluate(() => document.body.dataset.version);
  await patiently(glass.page.evaluate(() => navigator.serviceWorker.ready), 'the worker is not ready');
  await glass.page.reload();
  await glass.ready();
  assert.equal(await in_force(), version);
  assert.equal(await glass.page.evaluate(() => navigator.serviceWorker.controller !== null), true);
  const next = deploy(web);
  await glass.page.evaluate(() => document.dispatchEvent(new Event('visibilitychange'))); // it comes into sight
  const offered = () => glass.page.evaluate(() => !document.getElementById('version').hidden);
  await until(offered, () => 'the new version is not found');
  assert.equal(await glass.text('#keeping'), say('keeping_new'));
  await perform(glass, hand);
  await glass.rest();
  const may_be_taken = () => glass.page.evaluate(() => !document.getElementById('version-take').disabled);
  assert.equal(await may_be_taken(), false, 'a batch is open');
  await glass.page.evaluate(() => document.getElementById('version-take').click());
  assert.equal(await in_force(), version);
  await glass.page.reload(); // it opens on Today, with no batch on the slab
  await glass.ready();
  assert.equal(await in_force(), version);
  await until(may_be_taken, () => 'the new version cannot be taken');
  await glass.page.evaluate(() => document.getElementById('version-take').click());
  await until(async () => await in_force().catch(() => '') === next, () => 'the new version does not come');
  await glass.ready();
  await glass.close();
});
