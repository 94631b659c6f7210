// A script of taps as the desktop plays it, done again by touching the page.
import {execFileSync} from 'node:child_process';
import {mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {kept, kept_until} from './glass.mjs';

// Where a display is touched: 160 CSS pixels to the inch, as src/window/browser_window.cpp has it. A
// page of 1280 x 800 is smaller than the least display then, and drawn as if it were that (app/frame.cpp).
export const px_per_mm = Math.min(160 / 25.4, 1280 / 218, 800 / 136);
const program = process.env.SLABSIDE_PROGRAM, hand_program = process.env.SLABSIDE_HAND;

export function folder(test) {
  const path = mkdtempSync(join(tmpdir(), 'slabside-browser-'));
  test.after(() => rmSync(path, {recursive: true, force: true, maxRetries: 5}));
  return path;
}

export function script_for({w, h}, name, put = {}) {
  const text = readFileSync(new URL(name, import.meta.url), 'utf8');
  const filled = Object.entries(put).reduce((all, [word, by]) => all.replaceAll(word, by), text);
  return `display ${(w / px_per_mm).toFixed(3)}x${(h / px_per_mm).toFixed(3)}\n${filled}`;
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
export function deeds_of(script, where) {
  const file = join(where, 'script.taps');
  writeFileSync(file, script);
  return JSON.parse(execFileSync(hand_program, [file, join(where, 'studio'), String(px_per_mm)],
                                 {encoding: 'utf8', maxBuffer: 1 << 28}));
}

// name -> lines, as text with their ends.
export function sessions_in(where) {
  const sessions = join(where, 'studio', 'sessions');
  return new Map(readdirSync(sessions).sort().map((name) => [
    'sessions/' + name, readFileSync(join(sessions, name), 'utf8').match(/[^\n]*\n/g)]));
}

export function run(words) {
  return execFileSync(program, words, {encoding: 'utf8'});
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
      beside = ++presses % 7 === 0;
      if (beside) {
        await glass.down(nowhere, 1);
        await glass.up(1);
      }
    }
    if (deed.do === 'up') await glass.up();
  }
}
