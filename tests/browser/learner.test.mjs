// The worker that learns: a problem's bytes in, a result's bytes out, or an error's words.
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {readFileSync} from 'node:fs';
import {join} from 'node:path';
import {Glass, lying, serve} from './glass.mjs';
import {deeds_of, folder, perform, script_for, timezone_of, world_of} from './hand.mjs';
import {fixed_world, no_service_worker} from './page_hooks.mjs';
import {version} from './page_parts.mjs';

// As the program's own library calls it.
const ask = (problem) => new Promise((resolve) => {
  const worker = new Worker(Module.locateFile('learner.js'));
  worker.onmessage = (event) => {
    if (!event.data.finalResponse) return;
    resolve(new TextDecoder().decode(event.data.data));
    worker.terminate();
  };
  worker.postMessage(Module.slabsideProgram);
  worker.postMessage({funcName: 'learn', callbackId: 0, data: new TextEncoder().encode(problem)});
});

const note = (flow, felt) => ({segment: 0, ln_mL: Math.log(flow), sd: 0.01, tools: [], felt, dry_gum: 0.293});
const problem = {
  pigments: [[0.3, 0.6, 0.3]], tools: [], batches: [0.01],
  segments: [{batch: 0, pigments: [[0, 1]]}],
  notes: [note(1.6, 1), note(2.0, 2), note(2.6, 3)],
  priors: {theta: [[-2.12, 0.4], [-1.2, 0.5], [-1.39, 0.5], [-2.81, 0.5], [-1.39, 0.5], [-2.53, 0.5], [-3, 1]],
           alpha: [0, 0.4], slips: true, strength: [3.9, 1.6], drying: 3.9, walk: 0.015},
};

test('notes are learnt from beside the page', async (t) => {
  const site = await serve(process.env.SLABSIDE_WEB);
  t.after(site.close);
  const glass = await Glass.open(t, folder(t), {size: lying});
  await glass.visit(site.url);
  const answer = await glass.page.evaluate(ask, JSON.stringify(problem));
  assert.equal(answer[0], '+');
  const learnt = JSON.parse(answer.slice(1));
  assert.equal(learnt.end, 'found');
  assert.equal(learnt.notes, 3);
  assert.ok(Math.abs(Math.exp(learnt.pigments[0].ln_demand) - 2) < 0.3, answer);
  const refused = await glass.page.evaluate(ask, 'no problem');
  assert.equal(refused[0], '-');
  const why = JSON.parse(refused.slice(1)); // a sentence by its id, to be said in the page's language
  assert.ok(Number.isInteger(why.table) && Number.isInteger(why.row) && Array.isArray(why.args), refused);
  await glass.close();
});

const broken = {
  'cannot be had': (answer) => answer.writeHead(404).end(),
  'breaks down': (answer) => answer.writeHead(200, {'Content-Type': 'text/javascript'})
    .end('onmessage = () => { throw new WebAssembly.RuntimeError("unreachable"); };'),
  'has no memory': (answer) => answer.writeHead(200, {'Content-Type': 'text/javascript'})
    .end('WebAssembly.instantiate = () => Promise.reject(new RangeError("out of memory"));\n' +
         readFileSync(join(process.env.SLABSIDE_WEB, version, 'learner.js'), 'utf8')),
};
for (const [how, answer_with] of Object.entries(broken))
  test(`a worker that ${how} ends nothing, and is made anew for the next question`, async (t) => {
    const script = `/${version}/learner.js`, asked = {broken: 0, whole: 0};
    let whole = false;
    const site = await serve(process.env.SLABSIDE_WEB, {[script]: (request, answer) => {
      ++asked[whole ? 'whole' : 'broken'];
      if (!whole) return answer_with(answer);
      answer.writeHead(200, {'Content-Type': 'text/javascript'})
        .end(readFileSync(join(process.env.SLABSIDE_WEB, version, 'learner.js')));
    }});
    t.after(site.close);
    const hand = deeds_of(script_for(lying, 'batch.taps'), folder(t));
    const glass = await Glass.open(t, folder(t), {
      timezone: timezone_of(hand.deeds[0]), before: [[fixed_world, world_of(hand)], [no_service_worker]]});
    await glass.visit(site.url);
    let done = 0;
    for (; done < hand.deeds.length && asked.broken === 0; ++done) {
      await perform(glass, {deeds: [hand.deeds[done]]});
      await glass.rest();
    }
    assert.ok(asked.broken > 0);
    whole = true;
    await perform(glass, {deeds: hand.deeds.slice(done)});
    await glass.rest();
    assert.equal(await glass.page.evaluate(() => Slabside.has_stopped), false);
    assert.ok(asked.whole > 0, 'it is asked for again');
    await glass.close();
  });
