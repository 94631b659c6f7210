// Book puts on paper from the page what it puts on paper on a computer: a page goes to the browser's print,
// a table is saved, and what is said of it is true.
import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import {readFileSync, readdirSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {test} from 'node:test';
import {Glass, kept_until, lying, serve} from './glass.mjs';
import {deeds_of, folder, perform, play, script_for, sessions_in, timezone_of, world_of} from './hand.mjs';
import {catch_packs, catch_prints, fixed_world, no_service_worker} from './page_hooks.mjs';

const taps = script_for(lying, 'batch.taps');
const of_batch = ['sheet', 'labels', 'table'], of_list = ['paint_list', 'swatch_card'];

// On a computer: name -> text of each file that the same pads write.
function written_there(t) {
  const first = folder(t), computer = folder(t);
  const {batch} = play(taps, first);
  const pads = ['book', `batch ${batch}`, 'paper', ...of_batch, 'leave', 'to_list', 'list_paper', ...of_list];
  play(`${taps}\n${pads.map((pad) => `tap ${pad}`).join('\n')}\n`, computer);
  const place = join(computer, 'studio', 'paper');
  return {batch, first, files: new Map(readdirSync(place).map((name) => [name, readFileSync(join(place, name), 'utf8')]))};
}

async function a_batch_in_the_page(t, first, hooks = []) {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const hand = deeds_of(taps, folder(t)), [[, lines]] = [...sessions_in(first)];
  const glass = await Glass.open(t, folder(t), {
    timezone: timezone_of(hand.deeds[0]),
    before: [[fixed_world, world_of(hand)], [catch_packs, {shares: true}], ...hooks]});
  await glass.visit(site.url);
  await perform(glass, hand);
  await kept_until(glass.page, (files) => [...files.values()].some((there) => there.length >= lines.length - 1));
  await glass.page.evaluate(catch_prints);
  return glass;
}
// As on the computer, where a script's taps follow one another at once.
async function press(glass, pad) {
  await glass.page.evaluate(() => { window.slabsideClock.run_ms += 1000; });
  await glass.press_pad(pad);
}
const prints = (glass) => glass.page.evaluate(() => window.slabsidePrints);
const says = (glass, words) => glass.said_at('#beside', (said) => said.includes(words));

// A page's title, and its text as it stands and word by word, wherever its lines end.
const read = (glass, html) => glass.page.evaluate((text) => {
  const plain = text.replace(/<style>[^]*?<\/style>/, ''); // which the page's own policy would refuse
  const page = new DOMParser().parseFromString(plain, 'text/html');
  const all = page.createTreeWalker(page.body, NodeFilter.SHOW_TEXT), words = [];
  while (all.nextNode()) words.push(...all.currentNode.data.split(/\s+/).filter(Boolean));
  return {title: page.title, text: page.body.textContent, words};
}, html);

// What a reader of codes finds on a sheet of labels as it is printed at 400 dots to the inch: at 300 the modules of
// the usual labels are too small for it.
function codes_on(t, html) {
  const place = folder(t), svg = join(place, 'a.svg'), png = join(place, 'a.png');
  writeFileSync(svg, html.match(/<svg[^]*<\/svg>/)[0]);
  execFileSync('rsvg-convert', ['--dpi-x', '400', '--dpi-y', '400', '--background-color', 'white', '-o', png, svg]);
  return execFileSync('zbarimg', ['--quiet', '--raw', '-Sdisable', '-Sqrcode.enable', png], {encoding: 'utf8'});
}

test('from a batch and from all that is listed: what is printed is what a computer writes', async (t) => {
  const {batch, first, files} = written_there(t);
  const named = (ending) => [...files].find(([name]) => name.endsWith(ending))[1];
  const glass = await a_batch_in_the_page(t, first);
  for (const pad of ['book', `batch ${batch}`, 'paper']) await press(glass, pad);

  await press(glass, 'sheet');
  await says(glass, 'Handed to this browser’s print: Window-blue-sheet');
  await press(glass, 'labels');
  await says(glass, 'Handed to this browser’s print: Window-blue-labels');
  await press(glass, 'table');
  await says(glass, 'Saved by this browser as Window-blue-table.csv');
  for (const pad of ['leave', 'to_list', 'list_paper']) await press(glass, pad);
  await says(glass, 'Goes to this browser’s print; a table is saved as a file.');
  await press(glass, 'paint_list');
  await says(glass, 'Handed to this browser’s print: paints');
  await press(glass, 'swatch_card');
  await says(glass, 'Handed to this browser’s print: Window-blue-swatch');

  const [sheet, labels, paints, cards] = await prints(glass);
  for (const print of [sheet, labels, paints, cards]) {
    assert.equal(print.scripts, 0);
    assert.ok(print.rules > 0, 'its style counts');
    assert.equal(print.policy_holds, true);
  }
  for (const [print, ending] of [[sheet, '-sheet.html'], [labels, '-labels.html'], [paints, 'paints.html'], [cards, 'card.html']]) {
    const there = await read(glass, named(ending));
    assert.ok(there.words.length > 3, ending);
    assert.deepEqual(await read(glass, print.html), there, ending);
  }
  // A reader of codes passes over one or two of a sheet.
  const codes = codes_on(t, labels.html), on_each = labels.html.split('>Window blue<').length - 1;
  assert.ok(codes.split(`batch ${batch.slice(0, 8)}`).length - 1 > 0.9 * on_each);
  assert.deepEqual(new Set(codes.split('\n')), new Set(codes_on(t, named('-labels.html')).split('\n')));

  const [table] = await glass.page.evaluate(() => Promise.all(window.slabsidePacks.map(async (file) =>
    ({name: file.name, text: await file.text()}))));
  assert.deepEqual(table, {name: 'Window-blue-table.csv', text: named('-table.csv')});
  const refused = /^Blocked script execution/; // by the frame, of what the test itself has put there
  assert.deepEqual(glass.said.filter((line) => !refused.test(line)), []);
  await glass.close();
});

test('a touch prints while it still counts as one, and a print that fails is said', async (t) => {
  const {batch, first} = written_there(t);
  const glass = await a_batch_in_the_page(t, first);
  for (const pad of ['book', `batch ${batch}`, 'paper']) await press(glass, pad);
  const centre = await glass.page.evaluate(() => {
    const box = document.querySelector('#pads button[data-pad="sheet"]').getBoundingClientRect();
    return [box.x + box.width / 2, box.y + box.height / 2];
  });
  const touch = async () => {
    await glass.page.evaluate(() => { window.slabsideClock.run_ms += 1000; });
    await glass.tap(centre);
    await glass.rest();
  };
  await touch();
  assert.deepEqual((await prints(glass)).map(({touched}) => touched), [true]);
  await glass.page.evaluate(() => { window.slabsideNoPrinter = true; });
  await touch();
  await says(glass, 'Window-blue-sheet was not printed, as the browser could not do it: no printer here.');
  await glass.page.evaluate(() => { window.slabsideNoPrinter = false; });
  await touch();
  await says(glass, 'Handed to this browser’s print: Window-blue-sheet');
  assert.equal((await prints(glass)).length, 2);
  await glass.close();
});

test('what draws the codes is fetched for the first labels, and asked for again where it did not come', async (t) => {
  const {batch, first} = written_there(t);
  const glass = await a_batch_in_the_page(t, first, [[no_service_worker]]), asked = [];
  let refused = true;
  glass.page.on('request', (request) => { if (request.url().endsWith('/qrcode.js')) asked.push(request.url()); });
  await glass.page.route('**/qrcode.js', (route) => (refused ? route.abort() : route.fallback()));
  for (const pad of ['book', `batch ${batch}`, 'paper', 'sheet']) await press(glass, pad);
  await says(glass, 'Handed to this browser’s print: Window-blue-sheet');
  assert.deepEqual(asked, []);
  await press(glass, 'labels');
  await says(glass, 'No labels were made, as what draws the code on them could not be fetched: ');
  assert.equal((await prints(glass)).length, 1);
  refused = false;
  for (const _ of [1, 2]) {
    await press(glass, 'labels');
    await says(glass, 'Handed to this browser’s print: Window-blue-labels');
  }
  assert.equal(asked.length, 2);
  const [, labels] = await prints(glass);
  assert.match(codes_on(t, labels.html), /Window blue/);
  await glass.close();
});

test('where the page to print in did not come, it is said', async (t) => {
  const {batch, first} = written_there(t);
  const glass = await a_batch_in_the_page(t, first);
  await glass.page.evaluate(() => { Slabside.paper.ready = Promise.reject(new Error('paper.html')); });
  for (const pad of ['book', `batch ${batch}`, 'paper', 'sheet']) await press(glass, pad);
  await says(glass, 'Window-blue-sheet was not printed, as the browser could not do it: paper.html.');
  assert.deepEqual(await prints(glass), []);
  await glass.close();
});
