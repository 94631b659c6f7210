// Reads what `ours` prints and asks psychrolib the same; fails with the worst of each kind.
'use strict';
const fs = require('fs');
const psychrolib = require('psychrolib');
psychrolib.SetUnitSystem(psychrolib.SI);

const source = 'psychrolib 1.1.1 (npm), run over the grid: the worst point';
const kinds = {
  kPa: {
    formula: 'saturation pressure, kPa',
    theirs: (r) => psychrolib.GetSatVapPres(r.t) / 1000,
    tolerance: (x) => 1e-9 * x,
    why: 'the same equation: rounding',
  },
  ratio: {
    formula: 'humidity ratio, kg/kg',
    theirs: (r) => psychrolib.GetHumRatioFromRelHum(r.t, r.h, 1000 * r.air_kPa),
    tolerance: (x) => 1e-9 * x,
    why: 'the same equation: rounding',
  },
  dew: {
    formula: 'dew point, °C',
    theirs: (r) => psychrolib.GetTDewPointFromRelHum(r.t, r.h),
    tolerance: () => 0.001,
    why: 'the library seeks it to 0.001 °C',
  },
};

// How often each was compared, and where it came out worst, in tolerances.
const seen = {};
for (const line of fs.readFileSync(0, 'utf8').trim().split('\n')) {
  const row = JSON.parse(line);
  const name = Object.keys(kinds).find((kind) => kind in row);
  // Just above freezing the library's dew point may fall on its side of ice.
  if (name === 'dew' && row.dew < 0.1) continue;
  const expected = kinds[name].theirs(row);
  const tolerance = kinds[name].tolerance(expected);
  const off = Math.abs(row[name] - expected) / tolerance;
  const now = (seen[name] = seen[name] || { count: 0, off: -1 });
  now.count += 1;
  if (!(off <= now.off)) Object.assign(now, { off, row, expected, ours: row[name], tolerance });
}

let bad = false;
for (const [name, { formula, why }] of Object.entries(kinds)) {
  const now = seen[name];
  if (!now || !(now.off <= 1)) bad = true;
  if (!now) console.log(`${formula}: nothing was compared`);
  else console.log(`${formula}: ${now.count} compared, worst ${now.off.toExponential(1)} of the tolerance at ${JSON.stringify(now.row)}`);
  const table = process.env.SLABSIDE_PUBLISHED_ROWS;
  if (!table || !now) continue;
  const { expected, ours, tolerance } = now;
  const row = { formula, source, kind: 'reference library', expected, ours, tolerance, why };
  fs.appendFileSync(table, JSON.stringify(row) + '\n');
}
process.exit(bad ? 1 : 0);
