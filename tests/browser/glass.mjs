// The page in a browser of its own, touched from outside as a hand does it.
import {spawn} from 'node:child_process';
import {createServer} from 'node:http';
import {readFile} from 'node:fs/promises';
import {extname, join, normalize} from 'node:path';
import {chromium} from 'playwright-core';
import {at_end} from './at_end.mjs';
import {lines_in_store, tell_rest} from './page_hooks.mjs';

// Nothing here is measured in time: every wait is for a state, and ends with an error only where that
// never comes.
const patience_ms = Number(process.env.SLABSIDE_PATIENCE_MS ?? 300000);

export async function patiently(promise, otherwise) {
  let timer;
  const late = new Promise((_, failed) => {
    timer = setTimeout(() => failed(new Error(`${otherwise}, after ${patience_ms} ms`)), patience_ms);
  });
  try {
    return await Promise.race([promise, late]);
  } finally {
    clearTimeout(timer);
  }
}

// Asks again and again, and gives the first answer that is one.
export async function until(ask, otherwise) {
  const end = Date.now() + patience_ms;
  for (;;) {
    const answer = await patiently(ask(), 'the page gives no answer');
    if (answer) return answer;
    if (Date.now() > end) throw new Error(`${otherwise()}, after ${patience_ms} ms`);
    await new Promise((later) => setTimeout(later, 20));
  }
}

const kinds = {
  '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm', '.data': 'application/octet-stream',
  '.webmanifest': 'application/manifest+json',
};

// The folder as any plain web server has it. What the test itself answers at a path comes first.
export async function serve(folder, own = {}) {
  const server = createServer(async (request, answer) => {
    const path = normalize(new URL(request.url, 'http://here').pathname);
    if (own[path]) return own[path](request, answer);
    const file = join(folder, path.endsWith('/') ? path + 'index.html' : path);
    try {
      const bytes = await readFile(file);
      answer.writeHead(200, {'Content-Type': kinds[extname(file)] ?? 'text/plain'}).end(bytes);
    } catch (error) {
      answer.writeHead(404).end(String(error));
    }
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return {
    url: `http://127.0.0.1:${server.address().port}/`,
    close: () => new Promise((closed) => { server.close(closed); server.closeAllConnections(); }),
  };
}

// Started here and not by playwright, so that it can be killed.
function start(profile) {
  const words = ['--headless=new', '--no-sandbox', '--no-first-run', '--disable-background-networking',
                 '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader',
                 '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'];
  const program = process.env.SLABSIDE_CHROMIUM ?? '/usr/bin/chromium';
  const child = spawn(program, words, {detached: true, stdio: ['ignore', 'ignore', 'pipe']});
  const listening = new Promise((found, failed) => {
    let said = '';
    child.stderr.on('data', (bytes) => {
      said += bytes;
      const at = said.match(/DevTools listening on (ws:\S+)/);
      if (at) found({child, at: at[1]});
    });
    child.on('error', failed);
    child.on('exit', (status) => failed(new Error(`chromium ended with ${status}: ${said}`)));
  });
  return patiently(listening, 'chromium does not start');
}

export const lying = {w: 1280, h: 800}, upright = {w: 800, h: 1280};

export class Glass {
  // options: size, timezone, and what runs in the page before the program does: [function, argument].
  // Ends with the test at the latest.
  static async open(test, profile, options = {}) {
    const glass = new Glass();
    const {child, at} = await start(profile);
    glass.child = child;
    at_end(test, () => glass.kill());
    process.once('SIGTERM', () => glass.kill().then(() => process.exit(1)));
    glass.browser = await chromium.connectOverCDP(at, {timeout: patience_ms});
    glass.page = glass.browser.contexts()[0].pages()[0];
    glass.page.setDefaultTimeout(patience_ms);
    glass.page.on('console', (line) => glass.said.push(line.text()));
    glass.page.on('pageerror', (error) => glass.said.push(String(error)));
    const {w, h} = options.size ?? lying;
    await glass.page.setViewportSize({width: w, height: h});
    glass.cdp = await glass.browser.contexts()[0].newCDPSession(glass.page);
    await glass.cdp.send('Emulation.setTouchEmulationEnabled', {enabled: true, maxTouchPoints: glass.most_fingers});
    if (options.timezone)
      await glass.cdp.send('Emulation.setTimezoneOverride', {timezoneId: options.timezone});
    await glass.page.addInitScript(tell_rest);
    for (const [run, argument] of options.before ?? []) await glass.page.addInitScript(run, argument);
    return glass;
  }
  said = [];

  async visit(url) {
    await this.page.goto(url);
    await this.ready();
  }
  // Drawn, and everything that is kept was read.
  async ready() {
    try {
      await this.page.waitForSelector('body.ready canvas[aria-busy=false]');
    } catch (error) {
      throw new Error(`the page does not come: ${await this.page.textContent('#words')}\n` +
                      `${this.said.join('\n')}\n${error}`);
    }
  }
  // It shows and has kept what was done to it.
  rest() {
    return until(() => this.page.evaluate(() => window.slabsideIsAtRest()),
                 () => 'the page does not come to rest');
  }

  // As voice, a switch or a reader of screens finds it: by what it is and what it is called.
  button(name) { return this.page.getByRole('button', {name, exact: true}); }
  // No pointer comes with it.
  async press(name, button = this.button(name)) {
    await patiently(button.evaluate((element) => element.click()), `no button “${name}” is there`);
    await this.rest();
  }
  pads() {
    return this.page.evaluate(() => [...document.querySelectorAll('#pads button')].map((button) => ({
      id: button.dataset.pad, name: button.ariaLabel, current: button.ariaCurrent, pressed: button.ariaPressed})));
  }
  name_of(pad) {
    return until(async () => (await this.pads()).find(({id}) => id === pad)?.name, () => `no pad “${pad}” is there`);
  }
  async press_pad(pad) {
    const name = await this.name_of(pad); // which may be another one's too, and another by the time it is pressed
    await this.press(name, this.page.getByRole('button').and(this.page.locator(`[data-pad="${pad}"]`)));
  }
  text(selector) { return this.page.evaluate((where) => document.querySelector(where).textContent, selector); }
  said_at(selector, enough) {
    return until(async () => { const words = await this.text(selector); return enough(words) && words; },
                 () => `${selector} does not say it`);
  }

  most_fingers = 5;
  // All fingers that are down, each [x, y] by its number.
  fingers = new Map();
  async touch(type) {
    const touchPoints = type === 'touchEnd' ? []
        : [...this.fingers].map(([id, [x, y]]) => ({id, x, y, force: 1}));
    await patiently(this.cdp.send('Input.dispatchTouchEvent', {type, touchPoints}), 'no touch is taken');
  }
  async down(at, finger = 0) {
    this.fingers.set(finger, at);
    await this.touch('touchStart');
  }
  async move(at, finger = 0) {
    this.fingers.set(finger, at);
    await this.touch('touchMove');
  }
  async up(finger = 0) {
    this.fingers.delete(finger);
    await this.touch(this.fingers.size > 0 ? 'touchMove' : 'touchEnd');
  }
  async tap(at) {
    await this.down(at);
    await this.up();
  }

  async close() {
    const ended = new Promise((done) => this.child.once('exit', done));
    const session = await this.browser.newBrowserCDPSession();
    await session.send('Browser.close').catch(() => {});
    await patiently(ended, 'chromium does not end');
  }
  // The browser with all its processes, and no goodbye.
  async kill() {
    if (this.child.exitCode !== null || this.child.signalCode !== null) return;
    const ended = new Promise((done) => this.child.once('exit', done));
    process.kill(-this.child.pid, 'SIGKILL');
    await ended;
  }
}

// ---- what is kept

// Of sessions: file -> its lines, in the order of their keys.
export function files_of(rows) {
  const files = new Map();
  for (const [[file, n], line] of rows) {
    if (!files.has(file)) files.set(file, []);
    if (files.get(file).push(line) !== n + 1) throw new Error(`${file} lacks a line before ${n}`);
  }
  return files;
}

export async function kept(page) {
  return files_of(await page.evaluate(lines_in_store));
}

export async function kept_until(page, enough) {
  let files;
  await until(async () => enough(files = await kept(page)),
              () => `still only ${[...files].map(([f, l]) => f + ': ' + l.length)}`);
  return files;
}
