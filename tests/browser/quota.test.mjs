// A quota that the browser itself sets and that is used up: what no longer fits is said not to be saved, and is
// kept once there is room.
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {Glass, kept, kept_until, lying, patiently, serve} from './glass.mjs';
import {deeds_of, folder, perform, play, script_for, sessions_in, studio_of, timezone_of, world_of} from './hand.mjs';
import {fixed_world} from './page_hooks.mjs';

const sum = (files) => [...files.values()].reduce((all, lines) => all + lines.length, 0);
// What was done: without check values, what a part begins with, and the ids that were drawn.
const deeds_in = (lines) => lines.map((line) => JSON.parse(line)).filter(({e}) => !['began', 'left'].includes(e))
  .map(({c, p, batch, ...rest}) => rest).sort((a, b) => a.n - b.n);
const unsaved = (glass) => glass.page.evaluate(() => Number(
  document.querySelector('#pads button[data-pad="undo"]').ariaLabel.match(/(\d+) not saved/)?.[1] ?? 0));

// The page itself takes its part of the quota, so it is there before.
async function room_taken(t, url, profile) {
  const glass = await Glass.open(t, profile);
  await glass.visit(url);
  await patiently(glass.page.evaluate(() => navigator.serviceWorker.ready), 'the worker is not ready');
  const {usage} = await glass.page.evaluate(() => navigator.storage.estimate());
  await glass.close();
  return usage;
}

for (const [what, more] of [['nothing fits', 5000], ['the beginning fits', 12000]])
  test(`a quota of the browser’s own, where ${what}: it is said, and all is kept when there is room`, async (t) => {
    const site = await serve(process.env.SLABSIDE_WEB);
    t.after(site.close);
    const profile = folder(t), usage = await room_taken(t, site.url, profile);
    const script = script_for(lying, 'taps_without_end.taps').replace('x400', 'x60');
    const computer = folder(t), hand = deeds_of(script, folder(t));
    play(script, computer);
    const [[, lines]] = [...sessions_in(computer)], wanted = deeds_in(lines);
    const glass = await Glass.open(t, profile, {
      timezone: timezone_of(hand.deeds[0]), before: [[fixed_world, world_of(hand)]]});
    const {origin} = new URL(site.url);
    await glass.cdp.send('Storage.overrideQuotaForOrigin', {origin, quotaSize: usage + more});
    await glass.visit(site.url);
    await perform(glass, hand);
    await glass.rest();
    const fitted = sum(await kept(glass.page));
    assert.equal(fitted > 0, what !== 'nothing fits', `${fitted} lines fit`);
    assert.equal(await unsaved(glass), 1 + wanted.length - fitted);
    await glass.said_at('#beside', (words) => words.includes('not saved: The room it may use here is used up'));

    await glass.cdp.send('Storage.overrideQuotaForOrigin', {origin}); // as it was
    await glass.page.evaluate(() => {
      window.slabsideClock.wall_ms += 60000;
      window.slabsideClock.run_ms += 60000;
    });
    const files = await kept_until(glass.page, (all) => deeds_in([...all.values()].flat()).length >= wanted.length);
    await glass.rest();
    assert.equal(await unsaved(glass), 0);
    assert.deepEqual(deeds_in([...files.values()].flat()), wanted);
    studio_of(t, files);
    await glass.close();
  });
