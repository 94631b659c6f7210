// What studios tell each other, from page to page and between page and program.
import assert from 'node:assert/strict';
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {test} from 'node:test';
import {Glass, kept, lying, patiently, serve, until} from './glass.mjs';
import {deeds_of, folder, perform, play, run, script_for, timezone_of, world_of} from './hand.mjs';
import {catch_packs, fixed_world} from './page_hooks.mjs';

async function put_on(glass) {
  await glass.page.evaluate(() => {
    window.slabsideClock.wall_ms += 1000;
    window.slabsideClock.run_ms += 1000;
  });
}
async function press_all(glass, ...pads) {
  for (const pad of pads) {
    await put_on(glass);
    await glass.press_pad(pad);
  }
}
const said = (glass, words) => glass.said_at('#beside', (all) => all.includes(words));
const lines_of = async (glass, kind) =>
  [...(await kept(glass.page)).values()].flat().map((line) => JSON.parse(line)).filter(({e}) => e === kind);

async function pick(glass, file) {
  const asked = glass.page.waitForEvent('filechooser');
  await put_on(glass);
  await glass.tap(await glass.page.evaluate(() => {
    const {left, top, width, height} = document.querySelector('#pads button[data-pad="find_told"]').getBoundingClientRect();
    return [left + width / 2, top + height / 2];
  }));
  await (await patiently(asked, 'no file is asked for')).setFiles(file);
}

test('a page tells what its notes have taught, another begins from it; what is no such file is refused', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const script = script_for(lying, 'batch.taps'), computer = folder(t), hand = deeds_of(script, folder(t));
  play(script, computer);
  run(['tell', '--out', join(computer, 'told.json'), '--studio', join(computer, 'studio')]);
  const wanted = JSON.parse(readFileSync(join(computer, 'told.json'), 'utf8'));

  const one = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]), before: [[fixed_world, world_of(hand)], [catch_packs, {shares: false}]]});
  await one.visit(site.url);
  await perform(one, hand);
  await one.rest();
  await press_all(one, 'today', 'tablet', 'other_studios', 'tell');
  await said(one, 'Saved as slabside-2026-');
  const [name, text] = await one.page.evaluate(async () => {
    const file = window.slabsidePacks.at(-1);
    return [file.name, await file.text()];
  });
  assert.deepEqual(JSON.parse(text), wanted, 'as the program tells it');
  const file = join(computer, name);
  writeFileSync(file, text);
  await pick(one, file);
  await said(one, 'It was written by this very studio');
  await one.close();

  const other = await Glass.open(t, folder(t), {timezone: 'UTC', before: [[fixed_world, {wall_ms: Date.UTC(2026, 11, 1), run_ms: 0}]]});
  await other.visit(site.url);
  await press_all(other, 'tablet', 'other_studios');
  writeFileSync(join(computer, 'other.json'), '{"format": "something"}');
  await pick(other, join(computer, 'other.json'));
  await said(other, '“other.json” cannot be used.');
  await pick(other, file);
  await said(other, `“${name}” of `);
  await press_all(other, 'take_told');
  await said(other, 'A friend’s file is used: 1 pigment, from 1 batch.');
  const [line] = await lines_of(other, 'told');
  assert.deepEqual(JSON.parse(line.range), JSON.parse(text));
  assert.deepEqual(other.said, []);
  await other.close();
});
