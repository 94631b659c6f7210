// What Chromium itself says of installing the page.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import {join} from 'node:path';
import {test} from 'node:test';
import {Glass, patiently, serve} from './glass.mjs';
import {folder} from './hand.mjs';

async function judged(t, own) {
  const site = await serve(process.env.SLABSIDE_WEB, own);
  t.after(site.close);
  const glass = await Glass.open(t, folder(t));
  await glass.visit(site.url);
  await patiently(glass.page.evaluate(() => navigator.serviceWorker.ready), 'the worker is not ready');
  const {errors} = await glass.cdp.send('Page.getAppManifest');
  const {installabilityErrors} = await glass.cdp.send('Page.getInstallabilityErrors');
  await glass.close();
  return {errors, missing: installabilityErrors.map(({errorId}) => errorId)};
}

test('the browser would install the page, and finds nothing wrong with what it says of itself', async (t) => {
  assert.deepEqual(await judged(t, {}), {errors: [], missing: []});
});

test('it would not without large icons', async (t) => {
  const manifest = JSON.parse(readFileSync(join(process.env.SLABSIDE_WEB, 'manifest.webmanifest'), 'utf8'));
  manifest.icons = [];
  const {missing} = await judged(t, {'/manifest.webmanifest': (_, answer) =>
    answer.writeHead(200, {'Content-Type': 'application/manifest+json'}).end(JSON.stringify(manifest))});
  assert.ok(missing.includes('manifest-missing-suitable-icon'), `${missing}`);
});
