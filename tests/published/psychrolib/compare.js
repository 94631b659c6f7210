// Reads what `ours` prints and asks psychrolib the same; fails with the worst of each kind, or the first that fails.
'use strict';
const fs = require('fs');
const psychrolib = require('psychrolib');
psychrolib.SetUnitSystem(psychrolib.SI);

const source = 'psychrolib 1.1.1 (npm), run by the test';
const kinds = {
  kPa: {
    of: 'air/saturation_kPa',
    what: 'saturation pressure of water, kPa',
    at: (r) => `${r.t} °C`,
    theirs: (r) => psychrolib.GetSatVapPres(r.t) / 1000,
    tolerance: (x) => 1e-9 * x,
    why: 'the same equation: rounding',
  },
};

// How often each was compared, and where it came out worst, in tolerances. Roundings, which differ
// from machine to machine, do not choose the point.
const roundings = 0.01;
const seen = {};
for (const line of fs.readFileSync(0, 'utf8').trim().split('\n')) {
  const row = JSON.parse(line);
  const name = Object.keys(kinds).find((kind) => kind in row);
  const expected = kinds[name].theirs(row);
  const tolerance = kinds[name].tolerance(expected);
  const off = Math.abs(row[name] - expected) / tolerance;
  const now = (seen[name] = seen[name] || { count: 0, off: -1 });
  now.count += 1;
  const failed = now.count > 1 && !(now.off <= 1); // also where it is no number
  if (failed || (now.count > 1 && off <= Math.max(now.off, roundings))) continue;
  Object.assign(now, { off, row, expected, ours: row[name], tolerance });
}

let bad = false;
for (const [name, { of, what, at, why }] of Object.entries(kinds)) {
  const now = seen[name];
  if (!now || !(now.off <= 1)) bad = true;
  if (!now) console.log(`${what}: nothing was compared`);
  else console.log(`${what}: ${now.count} compared, worst ${now.off.toExponential(1)} of the tolerance at ${at(now.row)}`);
  const table = process.env.SLABSIDE_PUBLISHED_ROWS;
  if (!table || !now) continue;
  const { expected, ours, tolerance, count } = now;
  const kind = 'reference library';
  const row = { of, what, at: at(now.row), kind, source, expected, ours, tolerance, why, count };
  fs.appendFileSync(table, JSON.stringify(row) + '\n');
}
process.exit(bad ? 1 : 0);
