// A store that somebody empties under the page: it is said at once, all sessions are there again byte for
// byte before anything else is written, and no tick is shown until then.
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {Glass, kept, kept_until, lying, patiently, serve, until} from './glass.mjs';
import {deeds_of, folder, perform, play, script_for, sessions_in, timezone_of, world_of} from './hand.mjs';
import {catch_packs, fixed_world} from './page_hooks.mjs';
import {say} from './page_parts.mjs';

const script = script_for(lying, 'taps_without_end.taps').replace('x400', 'x6');
const in_short = 'this browser\'s store was emptied'; // on the slab
const sum = (files) => [...files.values()].reduce((all, lines) => all + lines.length, 0);
const as_text = (files) => [...files].map(([name, lines]) => [name, lines.join('')]);

// The store takes nothing while somebody says so.
function may_refuse() {
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (...words) {
    if (window.slabsideRefuses) throw new DOMException('The disk of this test is full.', 'QuotaExceededError');
    return put.apply(this, words);
  };
}

// The store is deleted as soon as the next line is on its way into it.
function may_delete() {
  const begin = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (...words) {
    const begun = begin.apply(this, words);
    if (!window.slabsideDeletes || words[1] !== 'readwrite') return begun;
    window.slabsideDeletes = false;
    indexedDB.deleteDatabase('slabside');
    return begun;
  };
}

const delete_store = (glass) => patiently(glass.page.evaluate(() => new Promise((done, failed) => {
  const asked = indexedDB.deleteDatabase('slabside');
  asked.onsuccess = () => done();
  asked.onerror = () => failed(asked.error);
})), 'the store is not deleted');

async function tapped(t, hooks = []) {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const hand = deeds_of(script, folder(t)), computer = folder(t);
  play(script, computer);
  const [[, lines]] = [...sessions_in(computer)];
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]),
    before: [[fixed_world, world_of(hand)], [catch_packs, {shares: true}], ...hooks]});
  await glass.visit(site.url);
  await perform(glass, hand);
  await kept_until(glass.page, (files) => sum(files) >= lines.length);
  await glass.rest();
  return {glass, hand};
}
const again = async ({glass, hand}) => { // the last tap once more, some seconds later
  await glass.page.evaluate(() => { window.slabsideClock.run_ms += 5000; window.slabsideClock.wall_ms += 5000; });
  for (const deed of hand.deeds.slice(-2)) {
    if (deed.do === 'down') await glass.down(deed.at);
    if (deed.do === 'up') await glass.up();
  }
};
const emptied = (glass) => glass.said_at('#emptied-said', (words) => words !== '');
const done = (glass) => glass.page.evaluate(() => document.getElementById('kept-done').click());
async function packed(glass) {
  const before = await glass.page.evaluate(() => {
    document.getElementById('pack-said').textContent = '';
    document.getElementById('pack-out').click();
    return window.slabsidePacks.length;
  });
  const said = await glass.said_at('#pack-said', (words) => words !== '');
  const bytes = await glass.page.evaluate(async (at) => [...new Uint8Array(await window.slabsidePacks[at].arrayBuffer())], before);
  return {said, bytes};
}

test('deleted: every session of earlier visits is back at once, though nobody taps', async (t) => {
  const {glass} = await tapped(t);
  await glass.page.reload();
  await glass.ready();
  await glass.rest();
  const before = as_text(await kept(glass.page)), pack = await packed(glass);
  assert.equal(before.length, 1);
  await delete_store(glass); // nobody has tapped anything in this visit
  assert.equal(await emptied(glass), say('store_put_back', 1, 0));
  await glass.rest();
  assert.deepEqual(as_text(await kept(glass.page)), before);
  assert.deepEqual((await packed(glass)).bytes, pack.bytes);
  assert.deepEqual(glass.said, []);
  await glass.close();
});

test('cleared by the browser, with a batch under way: its file goes on where it was, and photos are told of', async (t) => {
  const tablet = await tapped(t), {glass} = tablet;
  await glass.page.evaluate(() => Slabside.store.join([['photos/00.jpg', Uint8Array.of(1, 2, 3)]]));
  const before = await kept(glass.page);
  await glass.cdp.send('Storage.clearDataForOrigin', {origin: new URL(glass.page.url()).origin, storageTypes: 'all'});
  assert.equal(await emptied(glass), say('store_put_back', 1, 1));
  await glass.rest();
  assert.deepEqual(as_text(await kept(glass.page)), as_text(before));
  const pack = await packed(glass);
  assert.ok(pack.said.endsWith(say('pack_lacks', 1)), pack.said);
  await done(glass);
  await again(tablet);
  const after = await kept_until(glass.page, (files) => sum(files) > sum(before));
  assert.deepEqual([...after.keys()], [...before.keys()]);
  for (const [name, lines] of before) assert.deepEqual(after.get(name).slice(0, lines.length), lines);
  assert.deepEqual(glass.said, []);
  await glass.close();
});

test('emptied without a word from the browser: all is back with the next tap', async (t) => {
  const tablet = await tapped(t), {glass} = tablet;
  const before = await kept(glass.page);
  await patiently(glass.page.evaluate(() => new Promise((cleared) => {
    const asked = indexedDB.open('slabside');
    asked.onsuccess = () => {
      const both = asked.result.transaction(['lines', 'files'], 'readwrite');
      for (const store of ['lines', 'files']) both.objectStore(store).clear();
      both.oncomplete = () => { asked.result.close(); cleared(); };
    };
  })), 'the store is not cleared');
  await again(tablet);
  assert.equal(await emptied(glass), say('store_put_back', 1, 0));
  const after = await kept_until(glass.page, (files) => sum(files) > sum(before));
  for (const [name, lines] of before) assert.deepEqual(after.get(name).slice(0, lines.length), lines);
  await glass.close();
});

test('deleted while a line is on its way: no tick for it, and it is written with the others', async (t) => {
  const tablet = await tapped(t, [[may_delete]]), {glass} = tablet;
  const before = await kept(glass.page);
  await glass.page.evaluate(() => { window.slabsideDeletes = true; });
  await again(tablet);
  assert.equal(await emptied(glass), say('store_put_back', 1, 0));
  await glass.rest();
  const numbers = (files) => new Set([...files.values()].flat().map((line) => JSON.parse(line).n));
  const after = await kept_until(glass.page, (files) => numbers(files).size > numbers(before).size);
  for (const [name, lines] of before) assert.deepEqual(after.get(name).slice(0, lines.length), lines);
  assert.equal(numbers(after).size, numbers(before).size + 1);
  assert.deepEqual(glass.said, []);
  await glass.close();
});

test('a store that takes nothing back: no tick, it is said, and a pack holds all that was read', async (t) => {
  const tablet = await tapped(t, [[may_refuse]]), {glass} = tablet;
  const before = await kept(glass.page), pack = await packed(glass);
  const beside = () => glass.text('#beside');
  assert.ok(!(await beside()).includes(in_short));
  await glass.page.evaluate(() => { window.slabsideRefuses = true; });
  await delete_store(glass);
  assert.equal(await emptied(glass), say('store_not_put_back', 'QuotaExceededError: The disk of this test is full'));
  await until(async () => (await beside()).includes(in_short), () => 'the slab does not say it');
  assert.deepEqual((await packed(glass)).bytes, pack.bytes);
  await done(glass);
  await glass.page.evaluate(() => { window.slabsideRefuses = false; });
  await again(tablet);
  await emptied(glass);
  const after = await kept_until(glass.page, (files) => sum(files) > sum(before));
  for (const [name, lines] of before) assert.deepEqual(after.get(name).slice(0, lines.length), lines);
  await until(async () => !(await beside()).includes(in_short), () => 'the slab still says it');
  await glass.close();
});
