// The page as it ships, for engines that nobody can reach into before it starts: with one script more,
// the hooks, before its own; and somebody to whom it can tell things.
import {readFileSync} from 'node:fs';
import {join} from 'node:path';
import {at_end} from './at_end.mjs';
import {serve} from './glass.mjs';
import {lines_in_store} from './page_hooks.mjs';

const own_scripts = /<script defer src="[^"]*\/page\.js">/;

function page_with_hooks() {
  const page = readFileSync(join(process.env.SLABSIDE_WEB, 'index.html'), 'utf8');
  if (!own_scripts.test(page)) throw new Error('index.html has no page.js to put the hooks before');
  return page.replace(own_scripts, (script) => `<script src="/hooks.js"></script>\n${script}`);
}

async function body_of(request) {
  const parts = [];
  for await (const part of request) parts.push(part);
  return JSON.parse(Buffer.concat(parts).toString('utf8'));
}

// Gives its address. hooks() -> [function, argument] each, asked whenever a page starts; told({...}) hears what is posted to /told.
export async function serve_hooked(test, hooks, told = () => {}) {
  const send = (answer, kind, text) =>
    answer.writeHead(200, {'Content-Type': kind, 'Cache-Control': 'no-store'}).end(text);
  const site = await serve(process.env.SLABSIDE_WEB, {
    '/': (request, answer) => send(answer, 'text/html', page_with_hooks()),
    '/hooks.js': (request, answer) => send(answer, 'text/javascript', [
      String(lines_in_store),
      ...hooks().map(([run, argument]) => `(${run})(${JSON.stringify(argument ?? null)});`)].join('\n')),
    '/blank': (request, answer) => send(answer, 'text/html', '<!DOCTYPE html><title>Blank</title>'),
    '/told': async (request, answer) => {
      told(await body_of(request));
      answer.writeHead(204).end();
    },
  });
  at_end(test, site.close);
  return site.url;
}
