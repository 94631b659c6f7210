// WebKitGTK's own small browser, driven by WebDriver, and as anybody starts it: on a display of its own.
import {existsSync, readdirSync} from 'node:fs';
import {createServer} from 'node:net';
import {join} from 'node:path';
import {patiently, until} from './glass.mjs';
import {Running, display} from './processes.mjs';

function mini_browser() {
  const named = process.env.SLABSIDE_MINIBROWSER;
  if (named) return named;
  for (const machine of readdirSync('/usr/lib').filter((name) => name.includes('-linux-')))
    for (const version of ['webkit2gtk-4.1', 'webkit2gtk-4.0']) {
      const program = join('/usr/lib', machine, version, 'MiniBrowser');
      if (existsSync(program)) return program;
    }
  throw new Error('there is no MiniBrowser: third_party/install browser-test');
}

// It draws in software and looks for no desktop around it.
async function surroundings(test) {
  return {DISPLAY: await display(test), GDK_BACKEND: 'x11', LIBGL_ALWAYS_SOFTWARE: '1', NO_AT_BRIDGE: '1',
          GIO_USE_VFS: 'local', GSETTINGS_BACKEND: 'memory'};
}

// The driver tells nobody which port it has taken for itself, so it is given one that is free.
async function free_port() {
  const server = createServer();
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  const {port} = server.address();
  await new Promise((closed) => server.close(closed));
  return port;
}

async function ask(method, url, body) {
  const answer = await patiently(
    fetch(url, {method, body: body && JSON.stringify(body), headers: {'Content-Type': 'application/json'}}),
    `WebKit has no answer to ${url}`);
  const {value} = await answer.json();
  if (!answer.ok) throw new Error(`WebKit: ${value.error}, ${value.message}`);
  return value;
}

async function driver(test, timezone) {
  const port = await free_port();
  const running = new Running(test, 'WebKitWebDriver', ['--host=127.0.0.1', `--port=${port}`],
                              {...await surroundings(test), TZ: timezone});
  const url = `http://127.0.0.1:${port}`;
  await until(async () => {
    if (running.has_ended) throw new Error(`WebKitWebDriver has ended: ${running.said}`);
    return fetch(`${url}/status`).then((answer) => answer.ok, () => false);
  }, () => `WebKitWebDriver does not answer: ${running.said}`);
  return url;
}

// A page's answer comes back by a function of the driver's, so that it may take its time.
const asked_in_page = (run) => `
  const done = arguments[1];
  (async () => (${run})(JSON.parse(arguments[0])))().then(
    (value) => done({value: JSON.stringify(value ?? null)}), (error) => done({error: String(error)}));`;

const no_limit_ms = 2 ** 31 - 1; // who asks has the patience

export const webkit = {
  name: 'WebKit',

  // From any page at `blank`, in a window of so many CSS pixels, its bars among them.
  async drive(test, blank, {w, h}, timezone) {
    const url = await driver(test, timezone);
    const {sessionId} = await ask('POST', `${url}/session`, {capabilities: {alwaysMatch: {
      browserName: 'MiniBrowser', timeouts: {script: no_limit_ms, pageLoad: no_limit_ms},
      'webkitgtk:browserOptions': {binary: mini_browser(), args: ['--automation']}}}});
    const session = `${url}/session/${sessionId}`;
    await ask('POST', `${session}/window/rect`, {x: 0, y: 0, width: w, height: h});
    await ask('POST', `${session}/url`, {url: blank});
    return {
      pointer: 'mouse', // touches of its driver arrive as a mouse's
      go: (page) => ask('POST', `${session}/url`, {url: page}),
      act: (actions) => ask('POST', `${session}/actions`, {actions}),
      evaluate: async (run, argument) => {
        const {value, error} = await ask('POST', `${session}/execute/async`, {
          script: asked_in_page(run), args: [JSON.stringify(argument ?? null)]});
        if (error !== undefined) throw new Error(error);
        return JSON.parse(value);
      },
    };
  },

  // Nobody drives it: its automation keeps nothing. Its profile is kept.
  async open(test, profile, url) {
    const folders = {XDG_DATA_HOME: profile, XDG_CACHE_HOME: join(profile, 'cache'),
                     XDG_CONFIG_HOME: join(profile, 'config')};
    return new Running(test, mini_browser(), ['--geometry=1280x900', url], {...await surroundings(test), ...folders});
  },
};
