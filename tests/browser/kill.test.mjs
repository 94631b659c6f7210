// The browser is killed with all its processes while it is tapped: what it had confirmed is there.
import assert from 'node:assert/strict';
import {mkdirSync, writeFileSync} from 'node:fs';
import {dirname, join} from 'node:path';
import {test} from 'node:test';
import {Glass, kept, lying, serve} from './glass.mjs';
import {deeds_of, folder, run, script_for} from './hand.mjs';
import {tell_confirmed} from './page_hooks.mjs';

const times = Number(process.env.SLABSIDE_KILLS ?? 3);

// A batch is begun, and then two pads are tapped in turn without end: the same one twice within 80 ms
// would count as a bounce.
const in_turn = 'tap add gum_12\ntap add water\n'.repeat(200);
const script = script_for(lying, 'taps_without_end.taps').replace(/tap add.*\n/, in_turn);

async function tap_until_killed(glass, deeds, after) {
  for (const {do: what, at} of deeds) {
    if (after()) return;
    if (what === 'down') await glass.down(at);
    if (what === 'up') await glass.up();
  }
  throw new Error('not killed in time');
}

test('killed while it is tapped', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const {deeds} = deeds_of(script, folder(t));
  const profile = folder(t), confirmed = [];
  for (let round = 0; round < times; ++round) {
    const glass = await Glass.open(t, profile, {before: [[tell_confirmed]]});
    const before = confirmed.length, wanted = 25 + 13 * round;
    await glass.page.exposeBinding('confirmed', (_, key) => { confirmed.push(key); });
    await glass.visit(site.url);
    const enough = () => confirmed.length - before >= wanted;
    await tap_until_killed(glass, deeds, enough);
    await glass.kill();
    assert.ok(confirmed.length - before >= wanted);
  }

  const glass = await Glass.open(t, profile);
  await glass.visit(site.url);
  const files = await kept(glass.page);
  await glass.close();
  assert.equal(files.size, times);
  for (const [file, n] of confirmed) assert.ok(files.get(file)?.length > n, `${file} lacks line ${n}`);
  for (const [file, lines] of files) lines.forEach((line, n) => assert.equal(JSON.parse(line).n, n, file));

  // Written out, they are a studio as any other.
  const studio = folder(t);
  for (const [file, lines] of files) {
    mkdirSync(dirname(join(studio, file)), {recursive: true});
    writeFileSync(join(studio, file), lines.join(''));
  }
  assert.match(run(['check', studio]), /\S/);
});
