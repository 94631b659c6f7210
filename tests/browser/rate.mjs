// As quick as two hands tap: two pads in turn, fifteen taps a second by the page's clock. However long a machine
// takes for one, the next comes when it should.
import assert from 'node:assert/strict';
import {kept_until} from './glass.mjs';
import {perform, script_for} from './hand.mjs';

// Begins a batch, and taps each pad once.
export const two_pads = (size) => script_for(size, 'taps_without_end.taps')
  .replace(/tap add.*\n/, 'tap add gum_12\ntap add water\n');

export const count = Number(process.env.SLABSIDE_TAPS ?? 60);
const per_s = 15;
const added_in = (files) => [...files.values()].flat().map((line) => JSON.parse(line))
  .filter(({e, of}) => e === 'added' && (of === 'gum_12' || of === 'water'));

// The deeds of two_pads, and then the same taps at that rate. All of them count, in their order.
export async function tap_quickly(glass, {deeds}) {
  await perform(glass, {deeds});
  const [first, , second] = deeds.slice(-4), {wall_ms, run_ms} = deeds.at(-1);
  for (let i = 0; i < count; ++i) {
    const {at} = i % 2 === 0 ? first : second, later_ms = 2000 + i * 1000 / per_s;
    const when = (ms) => ({at, wall_ms: Math.round(wall_ms + later_ms + ms), run_ms: Math.round(run_ms + later_ms + ms)});
    await perform(glass, {deeds: [{do: 'down', ...when(0)}, {do: 'up', ...when(30)}]});
  }
  const added = added_in(await kept_until(glass.page, (files) => added_in(files).length >= count + 2));
  assert.deepEqual(added.map(({of}) => of), Array.from({length: count + 2}, (_, i) => i % 2 === 0 ? 'gum_12' : 'water'));
}
