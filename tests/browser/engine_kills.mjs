// An engine that nobody drives is killed while its page presses its own buttons, again and again.
import assert from 'node:assert/strict';
import {serve_hooked} from './engine_site.mjs';
import {files_of, until} from './glass.mjs';
import {all_is_there, folder, studio_of} from './hand.mjs';
import {press_without_end, tell_confirmed, tell_rest, tell_said} from './page_hooks.mjs';

const a_batch = ['plan', 'pigment pb29', 'weigh', 'digit 1', 'digit 0', 'enter', 'begin'];
const presses = {first: a_batch, in_turn: ['add gum_12', 'add water']};
const hooks = [[tell_rest], [tell_said], [tell_confirmed], [press_without_end, presses]];

// Numbers from 0 to below 1, always the same ones for a seed (mulberry32).
function random_from(seed) {
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let mixed = Math.imul(seed ^ (seed >>> 15), seed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

// What pages have told, of all rounds.
class Told {
  confirmed = [];
  kept = null; // by the page that has come last
  said = new Set();
  failed = null;
  hear({confirmed, kept, said, failed}) {
    if (confirmed) this.confirmed.push(confirmed);
    if (kept) this.kept = files_of(kept);
    for (const line of said ?? []) this.said.add(line);
    if (failed) this.failed = failed;
  }
  until(enough, otherwise) {
    return until(async () => {
      if (this.failed) throw new Error(`the page has failed: ${this.failed}`);
      return enough();
    }, otherwise);
  }
}

// The page comes once more, and what it finds is held against what was confirmed.
async function come(t, engine, profile, url, told) {
  told.kept = null;
  const running = await engine.open(t, profile, url);
  await told.until(() => told.kept, () => `the page does not come: ${running.said}`);
  all_is_there(told.kept, told.confirmed);
  return running;
}

export async function killed(t, engine, times, seed) {
  const told = new Told(), random = random_from(seed), profile = folder(t);
  const url = await serve_hooked(t, () => hooks, (what) => told.hear(what));
  for (let round = 0; round < times; ++round) {
    const running = await come(t, engine, profile, url, told);
    assert.equal(told.kept.size, round);
    const wanted = told.confirmed.length + 15 + Math.floor(20 * random()); // the first fourteen begin a batch
    await told.until(() => told.confirmed.length >= wanted, () => `only ${told.confirmed.length} lines of ${wanted}`);
    await new Promise((later) => setTimeout(later, 100 * random())); // anywhere between one line and the next
    await running.kill();
  }
  const running = await come(t, engine, profile, url, told);
  assert.equal(told.kept.size, times);
  studio_of(t, told.kept);
  await running.kill();
  t.diagnostic(`${engine.name}, killed ${times} times from seed ${seed}: ` +
               `${told.confirmed.length} lines were confirmed, all are there`);
  for (const line of told.said) t.diagnostic(`${engine.name} says: ${line}`);
}
