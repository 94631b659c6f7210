// Photos in the page: picked within the tap, kept in the store before their line, shown, read, printed, and
// carried by packs, each as on a computer.
import assert from 'node:assert/strict';
import {createHash} from 'node:crypto';
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {test} from 'node:test';
import {Glass, kept, kept_until, lying, serve, until} from './glass.mjs';
import {deeds_of, folder, perform, play, run, script_for, sessions_in, timezone_of, world_of} from './hand.mjs';
import {catch_packs, catch_prints, fixed_world} from './page_hooks.mjs';
import {parts} from './page_parts.mjs';

const taps = script_for(lying, 'batch.taps');
const digits = (bytes) => createHash('sha256').update(bytes).digest('hex');

test('the page’s own SHA-256 is that of everybody', () => {
  const {sha256} = parts('sha256.js');
  const bytes = Uint8Array.from({length: 1000}, (_, i) => i * i + i >> 3);
  for (const length of [0, 1, 55, 56, 63, 64, 65, 119, 120, 128, 1000])
    assert.equal(sha256(bytes.subarray(0, length)), digits(bytes.subarray(0, length)), `${length} bytes`);
  assert.equal(sha256(bytes.subarray(3, 77)), digits(bytes.subarray(3, 77)), 'a part of others');
});

async function a_batch_in_the_page(t, site) {
  const alone = folder(t), {batch} = play(taps, alone), hand = deeds_of(taps, folder(t));
  const [[, lines]] = [...sessions_in(alone)];
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]), before: [[fixed_world, world_of(hand)], [catch_packs, {shares: true}]]});
  await glass.visit(site.url);
  await perform(glass, hand);
  await kept_until(glass.page, (files) => [...files.values()].some((there) => there.length >= lines.length - 1));
  return {glass, batch};
}
async function served(t) {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  return site;
}
const put_on = (glass) => glass.page.evaluate(() => { window.slabsideClock.run_ms += 1000; });
async function press(glass, pad) {
  await put_on(glass);
  await glass.press_pad(pad);
}

// A blue swatch on white paper, by the browser's own canvas: invented.
const blue = [46, 79, 154];
async function photographed(glass, kind, of = blue) {
  const bytes = await glass.page.evaluate(async ([type, [r, g, b]]) => {
    const canvas = new OffscreenCanvas(1200, 900), context = canvas.getContext('2d');
    context.fillStyle = '#dedcd6';
    context.fillRect(0, 0, 1200, 900);
    context.fillStyle = `rgb(${r}, ${g}, ${b})`;
    context.fillRect(450, 320, 320, 260);
    return [...new Uint8Array(await (await canvas.convertToBlob({type, quality: 0.95})).arrayBuffer())];
  }, [kind, of]);
  return Buffer.from(bytes);
}

// By a touch, as it must be for a browser to show its files.
async function pick(glass, files) {
  const centre = await glass.page.evaluate(() => {
    const box = document.querySelector('#pads button[data-pad="add_photo"]').getBoundingClientRect();
    return [box.x + box.width / 2, box.y + box.height / 2];
  });
  await put_on(glass);
  const asked = glass.page.waitForEvent('filechooser');
  await glass.tap(centre);
  await (await asked).setFiles(files);
}
// The file's bytes as the store has them.
const in_store = async (glass, name) => Buffer.from(await glass.page.evaluate(async (file) =>
  [...await Slabside.store.read(file)], name));
const stored_names = (glass) => glass.page.evaluate(async () => (await Slabside.store.names()).filter((name) => name.startsWith('photos/')));
const photo_lines = (glass) => glass.page.evaluate(async () => {
  const all = [];
  for (const name of await Slabside.store.names())
    if (name.startsWith('sessions/'))
      all.push(...new TextDecoder().decode(await Slabside.store.read(name)).split('\n').filter(Boolean));
  return all.map((line) => JSON.parse(line)).filter(({e}) => e === 'photo');
});
const photos_told = (glass, enough) => until(async () => { const all = await photo_lines(glass); return enough(all) && all; },
                                             () => 'no line of it');

// The colour that the glass has in the middle of a pad, or of all.
async function seen_at(glass, pad) {
  const at = await glass.page.evaluate((id) => {
    const box = document.querySelector(`#pads button[data-pad^="${id}"]`).getBoundingClientRect();
    return [box.x + box.width / 2, box.y + box.height / 2];
  }, pad);
  const picture = (await glass.page.screenshot()).toString('base64');
  return glass.page.evaluate(async ([text, x, y]) => {
    const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], {type: 'image/png'}));
    const context = new OffscreenCanvas(image.width, image.height).getContext('2d');
    context.drawImage(image, 0, 0);
    return [...context.getImageData(x, y, 1, 1).data.slice(0, 3)];
  }, [picture, ...at]);
}
const near = (one, other) => one.every((level, i) => Math.abs(level - other[i]) < 12);
const shows_blue = (glass, pad) => until(async () => { await glass.rest(); return near(await seen_at(glass, pad), blue); },
                                         () => 'the photo does not show');

async function hand_on(glass) {
  await press(glass, 'today');
  await press(glass, 'tablet');
  await glass.press(await glass.text('#keeping'));
  await glass.page.evaluate(() => { document.getElementById('pack-said').textContent = ''; });
  await glass.page.evaluate(() => document.getElementById('pack-out').click());
  await glass.said_at('#pack-said', (words) => words !== '');
  const bytes = Buffer.from(await glass.page.evaluate(async () => [...new Uint8Array(await window.slabsidePacks.at(-1).arrayBuffer())]));
  await glass.page.evaluate(() => document.getElementById('kept-done').click());
  return bytes;
}

test('a photo is picked, kept, shown and read, as a computer reads it; and goes on in a pack', async (t) => {
  const site = await served(t), {glass, batch} = await a_batch_in_the_page(t, site);
  for (const pad of ['book', `batch ${batch}`, 'photos']) await press(glass, pad);
  const photo = await photographed(glass, 'image/jpeg'), name = `photos/${digits(photo)}.jpg`;
  await pick(glass, [{name: 'IMG 1.jpg', mimeType: 'image/jpeg', buffer: photo}]);
  await glass.name_of('photo_of swatch');
  assert.deepEqual(await photo_lines(glass), [], 'nothing is kept before it is said what it is of');
  await press(glass, 'photo_of swatch');
  const [told] = await photos_told(glass, (all) => all.length > 0);
  assert.equal(told.sha256, digits(photo));
  assert.deepEqual(await in_store(glass, name), photo);

  await glass.name_of('read_swatch'); // it opens, and a swatch is seen on it
  await press(glass, 'read_swatch');
  const [, {lab}] = await photos_told(glass, (all) => all.length > 1);
  await press(glass, 'leave');
  await shows_blue(glass, 'photo ');

  const computer = folder(t), pack = join(computer, 'a.zip'), studio = join(computer, 'studio');
  writeFileSync(pack, await hand_on(glass));
  run(['unpack', pack, '--out', studio]);
  assert.deepEqual(readFileSync(join(studio, name)), photo);
  assert.match(run(['check', studio]), /\S/);
  const words = run(['colour', join(studio, name)]); // it proposes the same regions, and reads them
  const [, l, a, b] = words.match(/L\* (-?[\d.]+).*a\* (-?[\d.]+).*b\* (-?[\d.]+)/).map(Number);
  for (const [here, there] of [[lab.l, l], [lab.a, a], [lab.b, b]])
    assert.ok(Math.abs(here - there) < 0.3, `${JSON.stringify(lab)} here, there ${words}`);

  const other = await Glass.open(t, folder(t), {before: [[fixed_world, {wall_ms: Date.UTC(2026, 10, 21), run_ms: 0}]]});
  await other.visit(site.url);
  await press(other, 'tablet');
  await other.press(await other.text('#keeping'));
  await other.page.setInputFiles('#pack-file', {name: 'a.zip', mimeType: 'application/zip', buffer: readFileSync(pack)});
  await other.said_at('#pack-said', (said) => said !== '');
  await other.page.evaluate(() => document.getElementById('kept-done').click());
  for (const pad of ['book', `batch ${batch}`, 'photos']) await press(other, pad);
  await shows_blue(other, 'photo ');
  assert.deepEqual(glass.said.concat(other.said), []);
  await other.close();

  // And on paper, where it is the picture itself.
  await glass.page.evaluate(catch_prints);
  for (const pad of ['book', 'paper', 'sheet']) await press(glass, pad);
  const [{images}] = await until(async () => { const all = await glass.page.evaluate(() => window.slabsidePrints); return all.length > 0 && all; },
                                 () => 'it does not print');
  assert.deepEqual(images, [[1200, 900]]);
  await glass.close();
});

test('several are asked about in turn, the same is kept once, and what is no picture is refused', async (t) => {
  const site = await served(t), {glass, batch} = await a_batch_in_the_page(t, site);
  for (const pad of ['book', `batch ${batch}`, 'photos']) await press(glass, pad);
  const png = await photographed(glass, 'image/png'), red = await photographed(glass, 'image/png', [160, 40, 30]);
  const file = (name, buffer) => ({name, mimeType: 'image/png', buffer});
  await pick(glass, [file('a.png', png), file('b.png', red)]);
  await press(glass, 'photo_of pan');
  await photos_told(glass, (all) => all.length === 1);
  await press(glass, 'photo_of slab');
  await photos_told(glass, (all) => all.length === 2);
  await glass.name_of('add_photo');
  await pick(glass, [file('again.png', png)]);
  await press(glass, 'photo_of pan');
  await glass.name_of('add_photo');
  assert.deepEqual((await photo_lines(glass)).map(({sha256, of}) => [sha256, of]), [[digits(png), 'pan'], [digits(red), 'slab']]);
  assert.deepEqual(await stored_names(glass), [png, red].map((bytes) => `photos/${digits(bytes)}.png`).sort());

  await pick(glass, [{name: 'note.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('this is no picture')}]);
  await glass.said_at('#beside', (words) => words.includes('note.jpg'));
  assert.ok(!(await glass.pads()).some(({id}) => id.startsWith('photo_of')));
  await press(glass, 'leave');
  const torn = png.subarray(0, 200); // its head is that of a picture
  await pick(glass, [file('torn.png', torn)]);
  await glass.said_at('#beside', (words) => words.includes('torn.png'));
  await press(glass, 'leave');
  assert.equal((await photo_lines(glass)).length, 2);
  assert.deepEqual(glass.said, []);
  await glass.close();
});

// EXIF that says: turned by a quarter, to be put behind a JPEG's first two bytes (Exif 2.3, 4.5.5, tag 0x0112).
const turned = Buffer.from('ffe100224578696600004d4d002a00000008000101120003000000010006000000000000', 'hex');

test('a photo that lies on its side stands upright', async (t) => {
  const site = await served(t), glass = await Glass.open(t, folder(t));
  await glass.visit(site.url);
  const photo = await photographed(glass, 'image/jpeg');
  const lies = Buffer.concat([photo.subarray(0, 2), turned, photo.subarray(2)]);
  const size = (bytes, ...how) => glass.page.evaluate(async ([all, words]) => {
    const {width, height} = await Slabside.pictures.pixels_of(Uint8Array.from(all), ...words);
    return [width, height];
  }, [[...bytes], how]);
  assert.deepEqual(await size(photo, 1, 0), [1200, 900]);
  assert.deepEqual(await size(lies, 1, 0), [900, 1200]);
  assert.deepEqual(await size(lies, 4, 0), [225, 300]);
  assert.deepEqual(await size(lies, 1, 256), [192, 256]);
  await glass.close();
});

test('a store that is full keeps no photo and no line of it, and says so', async (t) => {
  const site = await served(t), {glass, batch} = await a_batch_in_the_page(t, site);
  for (const pad of ['book', `batch ${batch}`, 'photos']) await press(glass, pad);
  const photo = await photographed(glass, 'image/jpeg');
  await pick(glass, [{name: 'a.jpg', mimeType: 'image/jpeg', buffer: photo}]);
  await glass.name_of('photo_of pan');
  const before = await kept(glass.page);
  await glass.page.evaluate(() => {
    const {add} = IDBObjectStore.prototype;
    IDBObjectStore.prototype.add = function (value, key) {
      if (key?.[0]?.startsWith('photos/')) throw new DOMException('The disk of this test is full.', 'QuotaExceededError');
      return add.call(this, value, key);
    };
  });
  await press(glass, 'photo_of pan');
  await glass.said_at('#beside', (words) => words.includes('The photo is not kept') && words.includes('no room left for it on this device'));
  assert.deepEqual(await kept(glass.page), before);
  assert.deepEqual(await stored_names(glass), []);
  await glass.close();
});
