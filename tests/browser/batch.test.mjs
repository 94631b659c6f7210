// A whole batch by touches in a browser gives the lines that the same taps give on a computer, to
// the byte, and after a reload it goes on.
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {Glass, lying, serve, upright} from './glass.mjs';
import {deeds_of, folder, perform, play, same_lines, script_for, timezone_of, world_of} from './hand.mjs';
import {fixed_world} from './page_hooks.mjs';
import {mkdirSync} from 'node:fs';
import {join} from 'node:path';

const shots = process.env.SLABSIDE_SHOTS; // a folder for pictures of the page

async function shoot(glass, name) {
  if (!shots) return;
  mkdirSync(shots, {recursive: true});
  await glass.page.screenshot({path: join(shots, name + '.png')});
}

async function learner_of(page) {
  const is_learner = (worker) => worker.url().endsWith('/learner.js');
  return page.workers().find(is_learner) ?? page.waitForEvent('worker', {predicate: is_learner});
}

async function whole_batch(t, size, name) {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const computer = folder(t), mirror = folder(t), profile = folder(t);

  const first = script_for(size, 'batch.taps');
  const {batch} = play(first, computer);
  const hand = deeds_of(first, mirror);
  const timezone = timezone_of(hand.deeds[0]);
  const glass = await Glass.open(t, profile, {size, timezone, before: [[fixed_world, world_of(hand)]]});
  await glass.visit(site.url);
  await shoot(glass, name + '-plan');
  await perform(glass, hand);
  const file = await same_lines(glass.page, computer);
  await shoot(glass, name + '-slab');
  await glass.close();

  const device = file.split('-')[3];
  const second = script_for(size, 'goes_on.taps', {BATCH: batch, DEVICE: device});
  play(second, computer);
  const later = deeds_of(second, mirror);
  const again = await Glass.open(t, profile, {size, timezone, before: [[fixed_world, world_of(later)]]});
  await again.visit(site.url);
  await perform(again, later);
  assert.notEqual(await same_lines(again.page, computer), file);
  // The batch is closed: what it felt is learnt from, in a worker.
  await learner_of(again.page);
  assert.deepEqual(glass.said.concat(again.said), []);
  await shoot(again, name + '-closed');
  await again.close();
}

test('a whole batch, lying', (t) => whole_batch(t, lying, 'lying'));
test('a whole batch, upright', (t) => whole_batch(t, upright, 'upright'));
