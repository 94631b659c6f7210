// A full disk, no store at all, no network: it is said, the taps count, and nothing is lost.
import assert from 'node:assert/strict';
import {mkdirSync, writeFileSync} from 'node:fs';
import {dirname, join} from 'node:path';
import {test} from 'node:test';
import {Glass, kept_until, lying, patiently, serve} from './glass.mjs';
import {deeds_of, folder, perform, play, run, script_for, sessions_in, timezone_of, world_of} from './hand.mjs';
import {fixed_world, full_disk, no_store} from './page_hooks.mjs';

const without_goodbye = (lines) => lines.filter((line) => JSON.parse(line).e !== 'left');
// What a line says but for its check values, which go on from line to line within one file.
const said = (line) => { const {c, p, ...rest} = JSON.parse(line); return rest; };
const sum = (files) => [...files.values()].reduce((all, lines) => all + lines.length, 0);

test('a disk that is full for one line: the session goes on in a new part', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const script = script_for(lying, 'taps_without_end.taps').replace('x400', 'x12');
  const computer = folder(t);
  play(script, computer);
  const [[file, lines]] = [...sessions_in(computer)];
  const hand = deeds_of(script, folder(t));
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]),
    before: [[fixed_world, world_of(hand)], [full_disk, {from: 15, to: 16}]],
  });
  await glass.visit(site.url);
  await perform(glass, hand);
  // One line more: the new part's own beginning.
  const files = await kept_until(glass.page, (all) => sum(all) >= lines.length + 1);
  await glass.close();
  assert.deepEqual([...files.keys()], [file, file.replace('.jsonl', '.1.jsonl')].sort());
  const first = files.get(file), second = files.get(file.replace('.jsonl', '.1.jsonl'));
  assert.equal(JSON.parse(second[0]).from, first.length);
  assert.deepEqual(first.concat(second.slice(1)).map(said), lines.map(said));

  const studio = folder(t);
  for (const [name, all] of files) {
    mkdirSync(dirname(join(studio, name)), {recursive: true});
    writeFileSync(join(studio, name), all.join(''));
  }
  assert.match(run(['check', studio]), /\S/);
});

// It is said where advice stands, on the slab; the pads stay as they are. Eyes read the picture, here
// it is only seen to differ from that of a browser that saves.
async function picture_of_the_slab(t, site, hooks) {
  const script = script_for(lying, 'taps_without_end.taps').replace('x400', 'x3');
  const hand = deeds_of(script, folder(t));
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]), before: [[fixed_world, world_of(hand)], ...hooks],
  });
  await glass.visit(site.url);
  await perform(glass, hand);
  if (hooks.length === 0) { // the tick is in the picture
    const computer = folder(t);
    play(script, computer);
    const [[, lines]] = [...sessions_in(computer)];
    await kept_until(glass.page, (files) => sum(files) === lines.length);
  }
  await glass.rest();
  const picture = await glass.page.screenshot();
  assert.equal(await glass.page.evaluate(() => document.body.className), 'ready');
  await glass.close();
  if (process.env.SLABSIDE_SHOTS) {
    mkdirSync(process.env.SLABSIDE_SHOTS, {recursive: true});
    writeFileSync(join(process.env.SLABSIDE_SHOTS, `saving-${hooks.length}.png`), picture);
  }
  return picture;
}

// How far the two are apart where they are furthest, in steps of 255.
async function apart(t, pictures) {
  const glass = await Glass.open(t, folder(t));
  const furthest = await patiently(glass.page.evaluate(async (texts) => {
    const pixels = async (text) => {
      const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      const image = await createImageBitmap(new Blob([bytes], {type: 'image/png'}));
      const context = new OffscreenCanvas(image.width, image.height).getContext('2d');
      context.drawImage(image, 0, 0);
      return context.getImageData(0, 0, image.width, image.height).data;
    };
    const [one, other] = await Promise.all(texts.map(pixels));
    if (one.length !== other.length) return 255;
    return one.reduce((most, value, i) => Math.max(most, Math.abs(value - other[i])), 0);
  }, pictures.map((picture) => picture.toString('base64'))), 'the pictures are not compared');
  await glass.close();
  return furthest;
}

test('no store at all: the taps count, and it is said', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const saving = await picture_of_the_slab(t, site, []);
  const again = await picture_of_the_slab(t, site, []);
  const failing = await picture_of_the_slab(t, site, [[no_store]]);
  // One browser rounds the edge of a line up that the next one rounds down, each always alike.
  assert.ok(await apart(t, [saving, again]) <= 1, 'the same taps give the same picture');
  assert.ok(await apart(t, [saving, failing]) > 100, 'a failure shows');
});

test('without a network, once it was there', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  const glass = await Glass.open(t, folder(t));
  await glass.visit(site.url);
  await patiently(glass.page.evaluate(() => navigator.serviceWorker.ready), 'the worker is not ready');
  await site.close();
  await glass.page.reload();
  await glass.ready();
  await glass.close();
});
