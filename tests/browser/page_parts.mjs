// Parts of the page that need no browser, as they ship.
import {readFileSync, readdirSync, renameSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';

const web = process.env.SLABSIDE_WEB;
export const version = readdirSync(web).find((name) => /^[0-9a-f]{16}$/.test(name));

const letters = {'&lt;': '<', '&quot;': '"', '&amp;': '&'};
const sentences = new Map([...readFileSync(join(web, 'index.html'), 'utf8')
  .matchAll(/<p data-say="(\w+)">([^<]*)<\/p>/g)]
  .map(([, name, words]) => [name, words.replace(/&(lt|quot|amp);/g, (sign) => letters[sign])]));

export function say(name, ...facts) {
  return sentences.get(name).replace(/\{(\d)\}/g, (_, at) => facts[at]);
}

export function parts(...files) {
  const text = files.map((file) => readFileSync(join(web, version, file), 'utf8')).join('\n');
  return new Function('Slabside', `${text}\nreturn Slabside;`)({say});
}

// A deployment: the same page under another version's name.
export function deploy(place) {
  const next = 'f'.repeat(16);
  renameSync(join(place, version), join(place, next));
  for (const file of ['index.html', 'worker.js']) {
    const text = readFileSync(join(place, file), 'utf8');
    writeFileSync(join(place, file), text.replaceAll(version, next));
  }
  return next;
}
