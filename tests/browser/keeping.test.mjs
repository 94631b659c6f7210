// Batches travel: from a tablet to a computer, where the program goes on with them, and back; and to
// another tablet. Every tap is there once, whoever was told of it how often.
import assert from 'node:assert/strict';
import {mkdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {test} from 'node:test';
import {Glass, kept, kept_until, lying, serve} from './glass.mjs';
import {deeds_of, folder, perform, play, run, script_for, sessions_in, timezone_of, world_of} from './hand.mjs';
import {catch_packs, fixed_world} from './page_hooks.mjs';
import {say} from './page_parts.mjs';

const taps = script_for(lying, 'taps_without_end.taps').replace('x400', 'x6');
const later = (batch) => `display 218x136
at 2026-11-20T15:10:00+01:00
seed 43
device c0de
tap book
tap batch ${batch}
tap take_up
tap add water x2 every 0.3
tap felt right
stop
`;

async function open_keeping(glass) {
  await glass.press_pad('today'); // on the slab the tablet's own screen has no pad
  await glass.press_pad('tablet');
  await glass.press(await glass.text('#keeping'));
  await glass.said_at('#kept-how', (words) => words !== '');
}
async function hand_on(glass) {
  const before = await glass.page.evaluate(() => {
    document.getElementById('pack-said').textContent = '';
    document.getElementById('pack-out').click();
    return window.slabsidePacks.length;
  });
  await glass.said_at('#pack-said', (words) => words !== '');
  const [name, bytes] = await glass.page.evaluate(async (at) => {
    const file = window.slabsidePacks[at];
    return [file.name, [...new Uint8Array(await file.arrayBuffer())]];
  }, before);
  assert.match(name, /^slabside-\d{4}-\d\d-\d\d\.zip$/);
  return Buffer.from(bytes);
}
async function take_in(glass, name, bytes) {
  await glass.page.evaluate(() => { document.getElementById('pack-said').textContent = ''; });
  await glass.page.setInputFiles('#pack-file', {name, mimeType: 'application/zip', buffer: bytes});
  return glass.said_at('#pack-said', (words) => words !== '');
}
function pack_of(place) {
  rmSync(join(place, 'a.zip'), {force: true}); // none is written over
  run(['pack', '--studio', join(place, 'studio'), '--out', join(place, 'a.zip')]);
  return readFileSync(join(place, 'a.zip'));
}
function unpacked(place, bytes) {
  writeFileSync(join(place, 'in.zip'), bytes);
  run(['unpack', join(place, 'in.zip'), '--out', join(place, 'studio')]);
  return join(place, 'studio');
}

async function a_batch_on_a_tablet(t, site, hooks) {
  const hand = deeds_of(taps, folder(t)), alone = folder(t);
  const {batch} = play(taps, alone);
  const [[, lines]] = [...sessions_in(alone)];
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]), before: [[fixed_world, world_of(hand)], [catch_packs, hooks]]});
  await glass.visit(site.url);
  await perform(glass, hand);
  await kept_until(glass.page, (files) => [...files.values()].some((there) => there.length >= lines.length));
  return {glass, batch};
}

test('a batch goes from a tablet to a computer, on there, and back; and to another tablet', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const {glass, batch} = await a_batch_on_a_tablet(t, site, {shares: true});
  await open_keeping(glass);
  const out = await hand_on(glass), computer = folder(t);
  unpacked(computer, out);
  assert.deepEqual(pack_of(computer), out, 'both pack the same bytes');

  const first = [...sessions_in(computer).keys()];
  play(later(batch), computer);
  assert.equal(sessions_in(computer).size, first.length + 1);
  const back = pack_of(computer);
  assert.equal(await take_in(glass, 'back.zip', back), say('pack_taken_in', 1, 0, first.length));
  assert.equal(await take_in(glass, 'back.zip', back), say('pack_taken_in', 0, 0, first.length + 1));
  await glass.page.evaluate(() => document.getElementById('kept-done').click());
  assert.deepEqual(await hand_on(glass), back);

  const told = (studio) => JSON.parse(run(['show', batch, '--studio', studio, '--json']));
  assert.deepEqual(told(unpacked(folder(t), await hand_on(glass))), told(join(computer, 'studio')));
  assert.deepEqual(glass.said, []);
  await glass.close();

  const other = await Glass.open(t, folder(t), {before: [[catch_packs, {shares: false}]]});
  await other.visit(site.url);
  await open_keeping(other);
  assert.equal(await take_in(other, 'back.zip', back), say('pack_taken_in', first.length + 1, 0, 0));
  assert.deepEqual(await kept(other.page), sessions_in(computer));
  assert.deepEqual(await hand_on(other), back);
  await other.page.evaluate(() => document.getElementById('kept-done').click());
  await other.press_pad('book');
  await other.name_of(`batch ${batch}`); // it is shown without a new start
  assert.deepEqual(other.said, []);
  await other.close();
});

test('what is no pack is refused in words, and nothing of it is kept', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const glass = await Glass.open(t, folder(t), {before: [[catch_packs, {shares: false}]]});
  await glass.visit(site.url);
  await open_keeping(glass);
  const before = await kept(glass.page);
  assert.equal(await take_in(glass, 'cat.zip', Buffer.from('a picture of a cat, by the look of it')),
               say('pack_not_taken', 'cat.zip', say('pack_no_zip')));
  assert.deepEqual(await kept(glass.page), before);
  const how = await glass.text('#kept-how');
  assert.ok(['kept_promised', 'kept_not_promised', 'kept_not_answered', 'kept_private']
    .some((each) => how.startsWith(say(each))), how);
  await glass.close();
});

// A session that was packed while it went on, and another one that somebody else wrote under its name.
test('a file that goes on becomes longer, and one that tells something else stays', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const whole = folder(t);
  play(taps, whole);
  const [[name, lines]] = [...sessions_in(whole)];
  const cut = folder(t), other = folder(t);
  for (const [place, text] of [[cut, lines.slice(0, 5).join('')], [other, lines[0] + lines.slice(2).join('')]]) {
    mkdirSync(join(place, 'studio', 'sessions'), {recursive: true});
    writeFileSync(join(place, 'studio', name), text);
  }
  const glass = await Glass.open(t, folder(t), {before: [[catch_packs, {shares: false}]]});
  await glass.visit(site.url);
  await open_keeping(glass);
  assert.equal(await take_in(glass, 'cut.zip', pack_of(cut)), say('pack_taken_in', 1, 0, 0));
  assert.equal(await take_in(glass, 'whole.zip', pack_of(whole)), say('pack_taken_in', 0, 1, 0));
  assert.equal(await take_in(glass, 'cut.zip', readFileSync(join(cut, 'a.zip'))), say('pack_taken_in', 0, 0, 1));
  assert.equal(await take_in(glass, 'other.zip', pack_of(other)),
               `${say('pack_taken_in', 0, 0, 0)} ${say('pack_stayed', name)}`);
  assert.deepEqual(await kept(glass.page), sessions_in(whole));
  await glass.close();
});
