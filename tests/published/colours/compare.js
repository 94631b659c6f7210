// Reads what `ours` prints and asks both libraries the same; fails with the worst of each kind.
'use strict';
const fs = require('fs');
const culori = require('culori');
const Color = require('colorjs.io').default;

const first = 'culori 4.0.2 (npm), run by the test';
const second = 'colorjs.io 0.5.2 (npm), run by the test';
const lab = ([l, a, b], mode) => ({ mode, l, a, b });
const rgb = ([r, g, b]) => ({ mode: 'rgb', r, g, b });
const three = ({ l, a, b }) => [l, a, b];
const culoriApart = culori.differenceCiede2000();
const culoriLab = { d50: culori.converter('lab'), d65: culori.converter('lab65') };
const colorLab = (row, space) => new Color('srgb', row.rgb).to(space).coords;

// Of a colour, what is furthest off of its three numbers.
const sameFormula = 'the same formula: rounding';
const kinds = [
  {
    of: 'difference/difference', what: 'CIEDE2000 of two random colours', key: 'apart', source: first,
    theirs: (row) => [culoriApart(lab(row.one, 'lab65'), lab(row.other, 'lab65'))],
    tolerance: 1e-6, why: sameFormula,
  },
  {
    of: 'difference/difference', what: 'CIEDE2000 of two random colours', key: 'apart', source: second,
    theirs: (row) => [Color.deltaE(new Color('lab', row.one), new Color('lab', row.other), '2000')],
    tolerance: 1e-6, why: sameFormula,
  },
  {
    of: 'cielab/lab', what: 'CIELAB under D65 of a random sRGB', key: 'd65', source: first,
    theirs: (row) => three(culoriLab.d65(rgb(row.rgb))),
    tolerance: 1e-6, why: sameFormula,
  },
  {
    of: 'cielab/lab', what: 'CIELAB under D65 of a random sRGB', key: 'd65', source: second,
    theirs: (row) => colorLab(row, 'lab-d65'),
    tolerance: 1e-6, why: sameFormula,
  },
  {
    of: 'cielab/lab', what: 'CIELAB under D50 of a random sRGB', key: 'd50', source: first,
    theirs: (row) => three(culoriLab.d50(rgb(row.rgb))),
    tolerance: 0.03, why: 'its D50 is x 0.3457, y 0.3585, ours that of profiles',
  },
  {
    of: 'cielab/lab', what: 'CIELAB under D50 of a random sRGB', key: 'd50', source: second,
    theirs: (row) => colorLab(row, 'lab'),
    tolerance: 0.03, why: 'its D50 is x 0.3457, y 0.3585, ours that of profiles',
  },
];

const at = (row) => (row.rgb ? `sRGB ${row.rgb.map((v) => v.toFixed(3)).join(' ')}`
  : `${row.one.map((v) => v.toFixed(2)).join(' ')} and ${row.other.map((v) => v.toFixed(2)).join(' ')}`);

// How often each was compared, and where it came out worst, in tolerances. Roundings, which differ
// from machine to machine, do not choose the point.
const roundings = 0.01;
const seen = kinds.map(() => ({ count: 0, off: -1 }));
for (const line of fs.readFileSync(0, 'utf8').trim().split('\n')) {
  const row = JSON.parse(line);
  kinds.forEach(({ key, theirs, tolerance }, k) => {
    if (!(key in row)) return;
    const now = seen[k];
    const ours = [].concat(row[key]);
    theirs(row).forEach((expected, i) => {
      now.count += 1;
      const off = Math.abs(ours[i] - expected) / tolerance;
      const failed = now.count > 1 && !(now.off <= 1); // also where it is no number
      if (failed || (now.count > 1 && off <= Math.max(now.off, roundings))) return;
      Object.assign(now, { off, row, expected, ours: ours[i] });
    });
  });
}

let bad = false;
kinds.forEach(({ of, what, source, tolerance, why }, k) => {
  const now = seen[k];
  if (!(now.off <= 1) || now.count === 0) bad = true;
  if (now.count === 0) {
    console.log(`${what}: nothing was compared`);
    return;
  }
  console.log(`${what}, ${source}: ${now.count} compared, worst ${now.off.toExponential(1)} of the tolerance at ${at(now.row)}`);
  const table = process.env.SLABSIDE_PUBLISHED_ROWS;
  if (!table) return;
  const { expected, ours, count, row } = now;
  const kind = 'reference library';
  fs.appendFileSync(table, JSON.stringify({ of, what, at: at(row), kind, source, expected, ours, tolerance, why, count }) + '\n');
});
process.exit(bad ? 1 : 0);
