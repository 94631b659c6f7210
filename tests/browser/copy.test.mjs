// A second copy in a folder of the tablet's, and what Today says of what lies in this browser alone.
import assert from 'node:assert/strict';
import {mkdirSync, writeFileSync} from 'node:fs';
import {dirname, join} from 'node:path';
import {test} from 'node:test';
import {Glass, kept, kept_until, lying, serve, until} from './glass.mjs';
import {deeds_of, folder, perform, run, script_for, timezone_of, world_of} from './hand.mjs';
import {catch_packs, fixed_world} from './page_hooks.mjs';
import {say} from './page_parts.mjs';

// Chromium's own private file system in place of a folder that somebody picks, which takes a person.
function picks_a_folder() {
  window.showDirectoryPicker = async () => {
    const all = await navigator.storage.getDirectory();
    return all.getDirectoryHandle('copy', {create: true});
  };
  const {queryPermission, requestPermission} = FileSystemHandle.prototype;
  FileSystemHandle.prototype.queryPermission = function (how) {
    return window.slabsideForgets ? Promise.resolve('prompt') : queryPermission.call(this, how);
  };
  FileSystemHandle.prototype.requestPermission = function (how) {
    window.slabsideForgets = false;
    return requestPermission.call(this, how);
  };
  const {createWritable} = FileSystemFileHandle.prototype;
  FileSystemFileHandle.prototype.createWritable = function (...how) {
    if (window.slabsideFolderFull) throw new DOMException('The folder of this test is full.', 'QuotaExceededError');
    return createWritable.apply(this, how);
  };
}
// name -> its text.
const copied = async (glass) => new Map(await glass.page.evaluate(async () => {
  const copy = await (await navigator.storage.getDirectory()).getDirectoryHandle('copy', {create: true}), all = [];
  for await (const [place, inside] of copy)
    for await (const [leaf, file] of inside) all.push([`${place}/${leaf}`, await (await file.getFile()).text()]);
  return all.sort();
}));
const put_into_copy = (glass, name, text) => glass.page.evaluate(async ([[place, leaf], words]) => {
  const copy = await (await navigator.storage.getDirectory()).getDirectoryHandle('copy', {create: true});
  const inside = await copy.getDirectoryHandle(place, {create: true});
  const out = await (await inside.getFileHandle(leaf, {create: true})).createWritable();
  await out.write(words);
  await out.close();
}, [name.split('/'), text]);
const all_kept = async (glass) => new Map([...await kept(glass.page)].map(([name, lines]) => [name, lines.join('')]).sort());

async function open_keeping(glass) {
  await glass.press_pad('today');
  await glass.press_pad('tablet');
  await glass.press(await glass.text('#keeping'));
}
const done = (glass) => glass.page.evaluate(() => document.getElementById('kept-done').click());
const press = (glass, id) => glass.page.evaluate((button) => document.getElementById(button).click(), id);
const copy_says = (glass, words) => glass.said_at('#copy-said', (said) => said === words);

async function opened(t, script) {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const hand = deeds_of(script, folder(t)), {wall_ms, run_ms} = world_of(hand); // its random numbers are the browser's own
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]),
    before: [[fixed_world, {wall_ms, run_ms}], [catch_packs, {shares: true}], [picks_a_folder]]});
  await glass.visit(site.url);
  return {glass, hand};
}
const put_on = (glass, ms) => glass.page.evaluate((by) => {
  window.slabsideClock.wall_ms += by;
  window.slabsideClock.run_ms += by;
}, ms);

test('all that is kept goes into a folder that was chosen, and after each batch what came since', async (t) => {
  const {glass, hand} = await opened(t, script_for(lying, 'batch.taps'));
  await open_keeping(glass);
  await press(glass, 'copy-choose');
  await copy_says(glass, say('copy_made', 'copy', 0));
  await done(glass);
  await perform(glass, hand);
  await glass.rest();
  assert.equal((await copied(glass)).size, 0, 'nothing is copied while a batch is under way');
  await put_on(glass, 1000);
  await glass.press_pad('close');
  await until(async () => (await copied(glass)).size > 0, () => 'nothing is copied');
  await copy_says(glass, say('copy_made', 'copy', 1));
  const all = await copied(glass);
  assert.deepEqual(all, await all_kept(glass));
  const studio = folder(t); // as the program opens it
  for (const [name, text] of all) {
    mkdirSync(dirname(join(studio, name)), {recursive: true});
    writeFileSync(join(studio, name), text);
  }
  assert.match(run(['show', 'last', '--studio', studio]), /Window blue/);

  await glass.page.reload(); // the folder is remembered
  await glass.ready();
  await put_on(glass, 86400000);
  for (const pad of ['plan', 'pigment pb28', 'weigh', 'digit 1', 'digit 0', 'enter', 'begin']) {
    await put_on(glass, 1000);
    await glass.press_pad(pad);
  }
  await put_on(glass, 1000);
  await open_keeping(glass);
  assert.equal(await glass.text('#copy-make'), say('copy_make', 'copy'));
  await press(glass, 'copy-make');
  await copy_says(glass, say('copy_made', 'copy', 2));
  assert.deepEqual(await copied(glass), await all_kept(glass));
  assert.deepEqual(glass.said, []);
  await glass.close();
});

test('a copy that cannot be made says so, and nothing in the folder is lost', async (t) => {
  const {glass, hand} = await opened(t, script_for(lying, 'taps_without_end.taps').replace('x400', 'x6'));
  await perform(glass, hand);
  const files = await kept_until(glass.page, (all) => [...all.values()].flat().length > 6);
  const [[name, lines]] = files;
  await open_keeping(glass);
  await glass.page.evaluate(() => { window.slabsideFolderFull = true; });
  await press(glass, 'copy-choose');
  await copy_says(glass, say('copy_not_made', 'copy', 'QuotaExceededError: The folder of this test is full.'));
  await glass.page.evaluate(() => { window.slabsideFolderFull = false; window.slabsideForgets = true; });
  await glass.page.evaluate(() => Slabside.copy.by_itself());
  await copy_says(glass, say('copy_not_allowed', 'copy'));
  await put_into_copy(glass, name, 'somebody else wrote this');
  await press(glass, 'copy-make'); // it asks, and is allowed
  await copy_says(glass, `${say('copy_made', 'copy', 0)} ${say('copy_stayed', name)}`);
  assert.equal((await copied(glass)).get(name), 'somebody else wrote this');
  await put_into_copy(glass, name, lines.slice(0, 3).join('')); // an older copy goes on
  await press(glass, 'copy-make');
  await copy_says(glass, say('copy_made', 'copy', 1));
  assert.deepEqual(await copied(glass), await all_kept(glass));
  await glass.close();
});

const a_day_ms = 86400000;
const waits_alone = async (glass) => {
  await put_on(glass, 1000);
  await glass.press_pad('today');
  await glass.rest();
  return (await glass.pads()).some(({id}) => id === 'due hand_on all');
};

test('Today asks for a pack of what has lain here alone for a week, until there is one', async (t) => {
  const {glass, hand} = await opened(t, script_for(lying, 'taps_without_end.taps').replace('x400', 'x6'));
  await perform(glass, hand);
  await kept_until(glass.page, (all) => [...all.values()].flat().length > 6);
  assert.equal(await waits_alone(glass), false);
  await put_on(glass, 8 * a_day_ms);
  assert.equal(await waits_alone(glass), true);
  assert.match(await glass.name_of('due hand_on all'), /8 days: hand on a pack/);
  await put_on(glass, 1000);
  await glass.press_pad('due hand_on all'); // leads to where that is done
  await press(glass, 'pack-out');
  await glass.said_at('#pack-said', (words) => words !== '');
  await done(glass);
  assert.equal(await waits_alone(glass), false);
  await glass.page.reload(); // it is remembered
  await glass.ready();
  await put_on(glass, 30 * a_day_ms);
  assert.equal(await waits_alone(glass), false);
  await glass.close();
});

test('a copy in a folder counts as well', async (t) => {
  const {glass, hand} = await opened(t, script_for(lying, 'taps_without_end.taps').replace('x400', 'x6'));
  await perform(glass, hand);
  await kept_until(glass.page, (all) => [...all.values()].flat().length > 6);
  await put_on(glass, 8 * a_day_ms);
  assert.equal(await waits_alone(glass), true);
  await open_keeping(glass);
  await press(glass, 'copy-choose');
  await copy_says(glass, say('copy_made', 'copy', 1));
  await done(glass);
  assert.equal(await waits_alone(glass), false);
  await glass.close();
});
