// Debian's Firefox, driven by WebDriver BiDi, and as anybody starts it.
import {writeFileSync} from 'node:fs';
import {join} from 'node:path';
import WebSocket from 'ws';
import {patiently, until} from './glass.mjs';
import {folder} from './hand.mjs';
import {Running, display} from './processes.mjs';

const program = process.env.SLABSIDE_FIREFOX ?? '/usr/bin/firefox-esr';

// It draws (which takes a display, though nothing is shown there), asks nobody anything at its start, calls nobody, and does not take a kill for a
// reason to start otherwise.
const settings = {
  'webgl.force-enabled': true,
  'browser.aboutwelcome.enabled': false,
  'browser.sessionstore.resume_from_crash': false,
  'browser.shell.checkDefaultBrowser': false,
  'datareporting.policy.dataSubmissionEnabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'termsofuse.bypassNotification': true,
  'toolkit.startup.max_resumed_crashes': -1,
};

async function start(test, profile, words, timezone) {
  writeFileSync(join(profile, 'user.js'), Object.entries(settings).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});\n`).join(''));
  return new Running(test, program, ['--headless', '--no-remote', '--profile', profile, ...words],
                     {DISPLAY: await display(test), TZ: timezone, MOZ_CRASHREPORTER_DISABLE: '1'});
}

class Bidi {
  last = 0;          // number of what was asked
  asked = new Map(); // number -> who waits for the answer
  constructor(socket) {
    this.socket = socket;
    socket.on('message', (text) => {
      const {id, type, result, message} = JSON.parse(text);
      const waits = this.asked.get(id);
      if (!waits) return; // an event
      this.asked.delete(id);
      if (type === 'success') waits.done(result);
      else waits.failed(new Error(message));
    });
  }
  static connect(url) {
    const socket = new WebSocket(url);
    return patiently(new Promise((done, failed) => {
      socket.once('open', () => done(new Bidi(socket)));
      socket.once('error', failed);
    }), 'Firefox does not let itself be driven');
  }
  ask(method, params) {
    const id = ++this.last;
    return patiently(new Promise((done, failed) => {
      this.asked.set(id, {done, failed});
      this.socket.send(JSON.stringify({id, method, params}));
    }), `Firefox has no answer to ${method}`);
  }
}

export const firefox = {
  name: 'Firefox',

  // From any page at `url`, on a glass of so many CSS pixels. (A window without a page gives the keys to
  // its address, and keeps that when one comes.)
  async drive(test, url, {w, h}, timezone) {
    const running = await start(test, folder(test), ['--remote-debugging-port', '0', url], timezone);
    const bidi = await Bidi.connect(await running.says(/WebDriver BiDi listening on (ws:\S+)/) + '/session');
    await bidi.ask('session.new', {capabilities: {}});
    let shown;
    await until(async () => ([shown] = (await bidi.ask('browsingContext.getTree', {})).contexts) && shown?.url === url,
                () => `Firefox shows ${shown?.url}, not ${url}`);
    const {context} = shown;
    await bidi.ask('browsingContext.setViewport', {context, viewport: {width: w, height: h}});
    return {
      pointer: 'touch',
      go: (url) => bidi.ask('browsingContext.navigate', {context, url, wait: 'complete'}),
      act: (actions) => bidi.ask('input.performActions', {context, actions}),
      evaluate: async (run, argument) => {
        const {result, exceptionDetails} = await bidi.ask('script.callFunction', {
          target: {context}, awaitPromise: true,
          functionDeclaration: `async (words) => JSON.stringify(await (${run})(JSON.parse(words)) ?? null)`,
          arguments: [{type: 'string', value: JSON.stringify(argument ?? null)}]});
        if (exceptionDetails) throw new Error(exceptionDetails.text);
        return JSON.parse(result.value);
      },
    };
  },

  // Nobody drives it. Its profile is kept.
  open: (test, profile, url) => start(test, profile, [url]),
};
