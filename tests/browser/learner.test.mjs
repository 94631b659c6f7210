// The worker that learns: a problem's bytes in, a result's bytes out, or an error's words.
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {Glass, lying, serve} from './glass.mjs';
import {folder} from './hand.mjs';

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
