// The page in the other engines: a whole batch gives the same lines as on a computer, quick taps all count, and what was
// confirmed is there after a kill.
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {EngineGlass} from './engine_glass.mjs';
import {firefox} from './engine_firefox.mjs';
import {killed} from './engine_kills.mjs';
import {serve_hooked} from './engine_site.mjs';
import {webkit} from './engine_webkit.mjs';
import {lying} from './glass.mjs';
import {deeds_of, folder, perform, play, same_lines, script_for, sessions_in, world_of} from './hand.mjs';
import {fixed_world, note_what_it_has, tell_heard, tell_rest, tell_said, what_it_has} from './page_hooks.mjs';
import {count, tap_quickly, two_pads} from './rate.mjs';

const glass_of = () => ({w: innerWidth, h: innerHeight, is_touched: matchMedia('(pointer: coarse)').matches});

const timezone = 'Etc/GMT-1'; // of batch.taps

async function whole_batch(t, engine) {
  let hooks;
  const url = await serve_hooked(t, () => hooks);
  const glass = new EngineGlass(await engine.drive(t, url + 'blank', lying, timezone));
  const size = await glass.page.evaluate(glass_of); // which the engine alone knows

  const computer = folder(t), script = script_for(size, 'batch.taps');
  play(script, computer);
  const hand = deeds_of(script, folder(t), size);
  hooks = [[fixed_world, world_of(hand)], [tell_rest], [tell_heard], [tell_said], [note_what_it_has]];
  await glass.visit(url);
  await perform(glass, hand);
  const file = await same_lines(glass.page, computer);
  t.diagnostic(`${engine.name}, ${size.w} x ${size.h}: ${sessions_in(computer).get(file).length - 1} lines are the same`);

  const has = await glass.page.evaluate(what_it_has);
  for (const [what, answer] of Object.entries(has)) {
    assert.match(answer, /\S/, what);
    t.diagnostic(`${engine.name}, ${what}: ${answer}`);
  }
  assert.deepEqual(await glass.page.evaluate(() => window.slabsideSaid), []);
}

async function quickly(t, engine) {
  let hooks;
  const url = await serve_hooked(t, () => hooks);
  const glass = new EngineGlass(await engine.drive(t, url + 'blank', lying, timezone));
  const size = await glass.page.evaluate(glass_of), hand = deeds_of(two_pads(size), folder(t), size);
  hooks = [[fixed_world, world_of(hand)], [tell_rest], [tell_heard], [tell_said]];
  await glass.visit(url);
  await tap_quickly(glass, hand);
  t.diagnostic(`${engine.name}: ${count} taps at 15 a second count, by ${glass.wire.pointer}`);
}

const times = Number(process.env.SLABSIDE_KILLS ?? 10), seed = Number(process.env.SLABSIDE_SEED ?? 1);

// Both engines at the same time: each is idle while it starts.
test('the other engines', {concurrency: true}, (t) => Promise.all([firefox, webkit].map((engine) =>
  t.test(engine.name, async (of_engine) => {
    await of_engine.test('a whole batch', (its) => whole_batch(its, engine));
    await of_engine.test('taps as quick as hands are', (its) => quickly(its, engine));
    await of_engine.test('killed while it is tapped', (its) => killed(its, engine, times, seed));
  }))));
