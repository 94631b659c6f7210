// Packs by the page and by the program on a computer: the same bytes out, the same files in, and what one
// refuses the other refuses in the same words. No browser is asked: what packs is plain JavaScript.
import assert from 'node:assert/strict';
import {spawnSync} from 'node:child_process';
import {createHash} from 'node:crypto';
import {existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync} from 'node:fs';
import {dirname, join} from 'node:path';
import {test} from 'node:test';
import {deflateRawSync} from 'node:zlib';
import {folder} from './hand.mjs';
import {parts, say} from './page_parts.mjs';
import {device, folder as folder_mode, link, zip_of} from './zip.mjs';

const {pack, unzip} = parts('unzip.js', 'pack.js');
const program = (...words) => spawnSync(process.env.SLABSIDE_PROGRAM, words, {encoding: 'utf8'});

const photo_name = (bytes) => `photos/${createHash('sha256').update(bytes).digest('hex')}.jpg`;
const session = 'sessions/2026-10-03T080529Z-4551-8432b35f460b.jsonl';
const files = new Map([
  [session, '{"e":"began"}\n{"e":"left"}\n'],
  ['sessions/2026-10-03T080529Z-4551-8432b35f460b.1.jsonl', ''],
  ['sessions/Größe 2.jsonl', 'a\n'],
  ['sessions/\u{1F3A8}.jsonl', 'beyond 16 bits\n'],
  ['sessions/\uFB01.jsonl', 'before it by its bytes\n'],
  [photo_name('picture'), 'picture'],
]);
const left_out = new Map([['sessions/.hidden.jsonl', 'x'], ['sessions/note.txt', 'x'],
                          ['sessions/a.jsonl.unfinished', 'x'], ['photos/cat.jpg', 'x']]);

function write(studio, all) {
  for (const [name, bytes] of all) {
    mkdirSync(dirname(join(studio, name)), {recursive: true});
    writeFileSync(join(studio, name), bytes);
  }
}

test('the page packs the same bytes as the program', async (t) => {
  const place = folder(t), all = new Map([...files, ...left_out]);
  write(join(place, 'studio'), all);
  const done = program('pack', '--studio', join(place, 'studio'), '--out', join(place, 'by_program.zip'));
  assert.equal(done.status, 0, done.stderr);
  const packed = await pack.of([...all.keys()].reverse(), async (name) => new Uint8Array(Buffer.from(all.get(name))));
  assert.equal(packed.files, files.size);
  const ours = Buffer.from(await packed.blob.arrayBuffer());
  assert.ok(ours.equals(readFileSync(join(place, 'by_program.zip'))));
  const back = new Map();
  await unzip.each(new Blob([ours]), (name, bytes) => { back.set(name, Buffer.from(bytes).toString()); });
  assert.deepEqual(new Map([...back].sort()), new Map([...files].sort()));
});

test('nothing to pack, and more than one pack holds', async () => {
  const none = async () => new Uint8Array(0);
  await assert.rejects(pack.of([...left_out.keys()], none), {sentence: 'pack_empty'});
  const many = Array.from({length: 65536}, (_, i) => `sessions/${i}.jsonl`);
  await assert.rejects(pack.of(many, none), {sentence: 'pack_too_long'});
});

// As each takes it: the files that came out, or why not. These sessions are of no maker, so the program
// says that they are damaged; they came out all the same.
function by_program(place, bytes) {
  const file = join(place, 'a.zip'), out = join(place, 'out');
  writeFileSync(file, bytes);
  const done = program('unpack', file, '--out', out);
  if (!existsSync(out)) return {why: done.stderr.match(/kept: ([^]*)\. Fetch it once more/)?.[1] ?? done.stderr};
  const all = readdirSync(out, {recursive: true, withFileTypes: true}).filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name));
  return {files: new Map(all.map((path) => [path.slice(out.length + 1), readFileSync(path, 'latin1')]).sort())};
}
async function by_page(bytes) {
  const all = [];
  try {
    await unzip.each(new Blob([bytes]), (name, got) => { all.push([name, Buffer.from(got).toString('latin1')]); });
  } catch (error) {
    if (!(error instanceof unzip.Refused)) throw error;
    return {why: say(error.sentence, ...error.facts)};
  }
  return {files: new Map(all.sort())};
}

const line = '{"e":"began"}\n', squeezed = deflateRawSync(Buffer.from(line.repeat(50)));
const swollen = Buffer.alloc(3 * 2 ** 20, 65);
const with_name = (name) => zip_of([{name: session, bytes: line}, {name, bytes: 'x'}]);
const broken_at = (bytes, at, by) => { const copy = Buffer.from(bytes); copy[at] ^= by; return copy; };
const good = zip_of([{name: session, bytes: line}]);
const cases = {
  'a plain one': good,
  'one of two files and a photo': zip_of([{name: session, bytes: line}, {name: photo_name('p'), bytes: 'p'}]),
  'a deflated one': zip_of([{name: session, bytes: squeezed, plain: line.repeat(50), method: 8}]),
  'its own folders': zip_of([{name: 'sessions/', bytes: '', mode: folder_mode}, {name: session, bytes: line}]),
  'by the larger record': zip_of([{name: session, bytes: line}], {wide: true}),
  'no zip at all': Buffer.from('this is no zip, and long enough to be looked at for one'),
  'nothing': Buffer.alloc(0),
  'cut off': good.subarray(0, -30),
  'something behind its end': zip_of([{name: session, bytes: line}], {behind: 'more'}),
  'a name that leaves': with_name('sessions/../../a.jsonl'),
  'a name from the root': with_name('/sessions/a.jsonl'),
  'a name with a backslash': with_name('sessions\\a.jsonl'),
  'a name with a zero byte': with_name('sessions/a\0.jsonl'),
  'a name with a control sign': with_name('sessions/a\u0085.jsonl'),
  'a name that runs from right to left': with_name('sessions/a\u202Elnosj.jsonl'),
  'a name that is not UTF-8': with_name(Buffer.from('sessions/\xff.jsonl', 'latin1')),
  'a surrogate in a name': with_name(Buffer.from('sessions/\xed\xa0\x80.jsonl', 'latin1')),
  'a file elsewhere': with_name('notes/a.jsonl'),
  'a file below': with_name('sessions/deeper/a.jsonl'),
  'no session': with_name('sessions/a.txt'),
  'an ending alone': with_name('sessions/.jsonl'),
  'no photo': with_name('photos/a.jpg'),
  'a name twice': with_name(session),
  'a name twice but for capitals': with_name(session.toUpperCase().replace('SESSIONS', 'sessions').replace('JSONL', 'jsonl')),
  'a name twice but for other capitals': zip_of([{name: 'sessions/é.jsonl', bytes: ''}, {name: 'sessions/É.jsonl', bytes: ''}]),
  'a link': zip_of([{name: session, bytes: '/etc/passwd', mode: link}]),
  'a device': zip_of([{name: session, bytes: '', mode: device}]),
  'a folder of another name': zip_of([{name: 'sessions/a.jsonl', bytes: '', mode: folder_mode}]),
  'an encrypted one': zip_of([{name: session, bytes: line, flags: 1}]),
  'another way of packing': zip_of([{name: session, bytes: line, method: 12}]),
  'a wrong sum': zip_of([{name: session, bytes: line, crc_off_by: 1}]),
  'a wrong sum, deflated': zip_of([{name: session, bytes: squeezed, plain: line.repeat(50), method: 8, crc_off_by: 1}]),
  'broken deflated bytes': zip_of([{name: session, bytes: broken_at(squeezed, 3, 255), plain: line.repeat(50), method: 8}]),
  'deflated to more than it says': zip_of([{name: session, bytes: squeezed, plain: line.repeat(50), size: 40, method: 8}]),
  'deflated to less than it says': zip_of([{name: session, bytes: squeezed, plain: line.repeat(50), size: 4000, method: 8}]),
  'another name in the list': zip_of([{name: 'sessions/b.jsonl', named: session, bytes: line}]),
  'larger than one may be': zip_of([{name: session, bytes: line, size: 300 * 2 ** 20}]),
  'swelling': zip_of([{name: session, bytes: deflateRawSync(swollen), plain: swollen, method: 8}]),
};

for (const [what, bytes] of Object.entries(cases))
  test(`both take or refuse alike: ${what}`, async (t) => {
    const theirs = by_program(folder(t), bytes), ours = await by_page(bytes);
    if (theirs.files) return assert.deepEqual(ours, theirs);
    // What is broken and how something is packed, each library says in words of its own.
    const start = (why) => why?.replace(/(broken|is not read): [^]*/, '$1');
    assert.equal(start(ours.why), start(theirs.why));
  });
