// The browser is killed with all its processes while it is tapped: what it had confirmed is there.
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {Glass, kept, lying, patiently, serve} from './glass.mjs';
import {all_is_there, deeds_of, folder, perform, script_for, studio_of, world_of} from './hand.mjs';
import {fixed_world, tell_confirmed} from './page_hooks.mjs';

const times = Number(process.env.SLABSIDE_KILLS ?? 3);

// A batch is begun, and then two pads are tapped in turn without end: the same one twice within 80 ms
// would count as a bounce.
const in_turn = 'tap add gum_12\ntap add water\n';
const script = script_for(lying, 'taps_without_end.taps').replace(/tap add.*\n/, in_turn);

function* without_end(deeds) {
  yield* deeds;
  const again = deeds.slice(-4), every_ms = 1000; // both pads, down and up
  for (let later_ms = every_ms;; later_ms += every_ms)
    for (const deed of again)
      yield {...deed, wall_ms: deed.wall_ms + later_ms, run_ms: deed.run_ms + later_ms};
}

async function tap_until(glass, deeds, enough) {
  for (const deed of without_end(deeds)) {
    if (enough()) return;
    await perform(glass, {deeds: [deed]});
  }
}

// An hour after the last one.
const script_of = (round) => script.replace(/(?<=\nat )\S+(?=\+)/,
  new Date(Date.UTC(2026, 10, 20, 14 + round, 2)).toISOString().slice(0, 19));

test('killed while it is tapped', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const profile = folder(t), confirmed = [];
  let place = folder(t); // what was made before: where pads lie depends on it
  for (let round = 0; round < times; ++round) {
    const {deeds} = deeds_of(script_of(round), place);
    const {wall_ms, run_ms} = world_of({deeds}); // its random numbers are the browser's own
    const glass = await Glass.open(t, profile, {before: [[fixed_world, {wall_ms, run_ms}], [tell_confirmed]]});
    const before = confirmed.length, wanted = 25 + 13 * (round % 10);
    await glass.page.exposeBinding('confirmed', (_, key) => { confirmed.push(key); });
    await glass.visit(site.url);
    const enough = () => confirmed.length - before >= wanted;
    await patiently(tap_until(glass, deeds, enough), `fewer than ${wanted} lines are confirmed`);
    await glass.kill();
    place = await there_again(t, site, profile, confirmed, round + 1);
  }
});

async function there_again(t, site, profile, confirmed, sessions) {
  const glass = await Glass.open(t, profile);
  await glass.visit(site.url);
  const files = await kept(glass.page);
  await glass.close();
  assert.equal(files.size, sessions);
  all_is_there(files, confirmed);
  return studio_of(t, files);
}
