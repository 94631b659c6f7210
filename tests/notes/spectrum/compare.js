// What we read in each table of the collection, beside what the collection says stands in it; and
// the same again after another program has stored it: in UTF-16, with a mark, with other line ends.
'use strict'
const assert = require('assert')
const fs = require('fs')
const os = require('os')
const path = require('path')
const { execFileSync } = require('child_process')

const [ours, collection] = process.argv.slice(2)
const phone = 'Contact Phone Number'
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'tables-'))

const stores = {
  'as it is': bytes => bytes,
  'with a mark': bytes => Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), bytes]),
  'in UTF-16': bytes => Buffer.from('\ufeff' + bytes.toString('utf8'), 'utf16le'),
  'in UTF-16, the other way round': bytes =>
    Buffer.from('\ufeff' + bytes.toString('utf8'), 'utf16le').swap16()
}

function objects(rows) {
  const [headings, ...rest] = rows
  return rest.map(row => Object.fromEntries(row.map((cell, at) => [headings[at], cell])))
}

function read(bytes) {
  const file = path.join(folder, 'table.csv')
  fs.writeFileSync(file, bytes)
  return objects(JSON.parse(execFileSync(ours, [file], { encoding: 'utf8' })))
}

let passed = 0
try {
  for (const file of fs.readdirSync(path.join(collection, 'csvs')).sort()) {
    const name = file.replace(/\.csv$/, '')
    const bytes = fs.readFileSync(path.join(collection, 'csvs', file))
    const told = JSON.parse(fs.readFileSync(path.join(collection, 'json', name + '.json'), 'utf8'))
    const expected = Array.isArray(told) ? told : [told]
    for (const [how, store] of Object.entries(stores)) {
      const rows = read(store(bytes))
      // The collection says another telephone number than stands in its own table.
      if (name === 'location_coordinates') for (const row of [...rows, ...expected]) delete row[phone]
      assert.deepStrictEqual(rows, expected, `${name}, ${how}`)
      ++passed
    }
  }
} finally {
  fs.rmSync(folder, { recursive: true })
}
assert(passed >= 4 * 12, 'the collection has twelve tables')
console.log(`${passed} tables read as the collection says`)
