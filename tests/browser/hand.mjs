// A script of taps as the desktop plays it, done again by touching the page.
import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import {mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import {at_end} from './at_end.mjs';
import {kept, kept_until, lying} from './glass.mjs';

// 160 CSS pixels to the inch where a display is touched and not known, 96 elsewhere, as src/window/browser_page.js
// has it. A page that is smaller than the least display is drawn as if it were that (app/frame.cpp).
export function px_per_mm_of({w, h, is_touched = true}) {
  return Math.min((is_touched ? 160 : 96) / 25.4, Math.max(w, h) / 218, Math.min(w, h) / 136);
}
const program = process.env.SLABSIDE_PROGRAM, hand_program = process.env.SLABSIDE_HAND;

export function folder(test) {
  const path = mkdtempSync(join(tmpdir(), 'slabside-browser-'));
  at_end(test, () => rmSync(path, {recursive: true, force: true, maxRetries: 5}));
  return path;
}

export function script_for(glass, name, put = {}) {
  const px_per_mm = px_per_mm_of(glass), mm = (px) => (px / px_per_mm).toFixed(3);
  const text = readFileSync(new URL(name, import.meta.url), 'utf8');
  const filled = Object.entries(put).reduce((all, [word, by]) => all.replaceAll(word, by), text);
  return `display ${mm(glass.w)}x${mm(glass.h)}\n${filled}`;
}

// What the program itself makes of a script, in a studio of its own.
export function play(script, where) {
  const file = join(where, 'script.taps');
  writeFileSync(file, script);
  const said = execFileSync(program, ['play', file, '--studio', join(where, 'studio')], {encoding: 'utf8'});
  const batch = said.match(/^batch (\S+)/m);
  return {said, batch: batch && batch[1]};
}

// What a hand does for the same script. It plays it in another studio of the same content.
export function deeds_of(script, where, glass = lying) {
  const file = join(where, 'script.taps');
  writeFileSync(file, script);
  return JSON.parse(execFileSync(hand_program, [file, join(where, 'studio'), String(px_per_mm_of(glass))],
                                 {encoding: 'utf8', maxBuffer: 1 << 28}));
}

// name -> lines, as text with their ends.
export function sessions_in(where) {
  const sessions = join(where, 'studio', 'sessions');
  return new Map(readdirSync(sessions).sort().map((name) => [
    'sessions/' + name, readFileSync(join(sessions, name), 'utf8').match(/[^\n]*\n/g)]));
}

const without_goodbye = (lines) => lines.filter((line) => JSON.parse(line).e !== 'left');

// The page has written all lines that the program has, to the byte, and no other. The program has left
// since, the page has not; what it wrote before may have ended as browsers end. Gives the newest file.
export async function same_lines(page, where) {
  const wanted = new Map([...sessions_in(where)].map(([file, lines]) => [file, without_goodbye(lines)]));
  const newest = [...wanted.keys()].at(-1);
  const there = await kept_until(page, (files) => files.get(newest)?.length >= wanted.get(newest).length);
  for (const [file, lines] of there) if (file !== newest) there.set(file, without_goodbye(lines));
  assert.deepEqual(there, wanted);
  return newest;
}

export function run(words) {
  return execFileSync(program, words, {encoding: 'utf8'});
}

// Written out, what a page keeps is a studio as any other, and whole. Gives the folder it lies in.
export function studio_of(test, files) {
  const place = folder(test), studio = join(place, 'studio');
  for (const [file, lines] of files) {
    mkdirSync(dirname(join(studio, file)), {recursive: true});
    writeFileSync(join(studio, file), lines.join(''));
  }
  assert.match(run(['check', studio]), /\S/);
  return place;
}

// What was shown as saved, [file, n] each, is there, and no line before it is missing.
export function all_is_there(files, confirmed) {
  for (const [file, n] of confirmed) assert.ok(files.get(file)?.length > n, `${file} lacks line ${n}`);
  for (const [file, lines] of files) lines.forEach((line, n) => assert.equal(JSON.parse(line).n, n, file));
}

export function timezone_of(deed) {
  const hours = -deed.utc_offset_min / 60; // the names' sign is turned round
  return `Etc/GMT${hours >= 0 ? '+' : ''}${hours}`;
}

export function world_of({deeds, random}) {
  return {wall_ms: deeds[0].wall_ms - deeds[0].run_ms, run_ms: 0, random};
}

const keys = {'Page Down': 'PageDown', 'Page Up': 'PageUp', 'Left': 'ArrowLeft', 'Right': 'ArrowRight',
              'Up': 'ArrowUp', 'Down': 'ArrowDown'};

async function write(glass, deed) {
  await glass.tap(deed.at);
  await glass.page.waitForSelector('#typed:focus', {state: 'attached'});
  await glass.page.keyboard.press('Control+a');
  await glass.rest();
  if (deed.text.includes(' ')) { // as a tablet's own keyboard does it, and as a computer's
    await glass.page.keyboard.insertText(deed.text);
  } else {
    for (const letter of deed.text) await glass.page.keyboard.press(letter === ' ' ? 'Space' : letter);
  }
  await glass.rest(); // while the clock still stands where it was written
}

const nowhere = [3, 3]; // no pad

async function set_clock(glass, {wall_ms, run_ms}) {
  await glass.page.evaluate(([wall, run]) => {
    window.slabsideClock.wall_ms = wall;
    window.slabsideClock.run_ms = run;
  }, [wall_ms, run_ms]);
}

// Nothing is touched, and as time passes the page writes a line by itself.
async function look(glass, deed) {
  const lines = (files) => [...files.values()].flat().length;
  await glass.rest();
  const before = lines(await kept(glass.page));
  await set_clock(glass, deed);
  await kept_until(glass.page, (files) => lines(files) > before);
}

// Every seventh press has a second finger laid beside it that must count for nothing.
export async function perform(glass, {deeds}) {
  let presses = 0, beside = false;
  for (const deed of deeds) {
    if (deed.do === 'look') {
      await look(glass, deed);
      continue;
    }
    await set_clock(glass, deed);
    if (deed.do === 'write') await write(glass, deed);
    if (deed.do === 'press') await glass.page.keyboard.down(keys[deed.key] ?? deed.key);
    if (deed.do === 'release') await glass.page.keyboard.up(keys[deed.key] ?? deed.key);
    if (deed.do === 'move') await glass.move(deed.at);
    if (deed.do === 'down') {
      await glass.down(deed.at);
      beside = ++presses % 7 === 0 && glass.most_fingers > 1;
      if (beside) {
        await glass.down(nowhere, 1);
        await glass.up(1);
      }
    }
    if (deed.do === 'up') await glass.up();
  }
}
