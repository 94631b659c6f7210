// The page in an engine that is driven from outside, as Glass (glass.mjs) has it in Chromium. What
// differs between engines is the wire: evaluate, act, go. What is done by hand is in W3C's actions,
// which WebDriver and WebDriver BiDi have alike.
import {until} from './glass.mjs';

const key_signs = {Control: '\uE009', PageUp: '\uE00E', PageDown: '\uE00F', ArrowLeft: '\uE012',
                   ArrowUp: '\uE013', ArrowRight: '\uE014', ArrowDown: '\uE015', Space: ' '};
const sign_of = (key) => key_signs[key] ?? key;

export class EngineGlass {
  constructor(wire) {
    this.wire = wire;
    const evaluate = (run, argument) => wire.evaluate(`${run}`, argument);
    const keys = (...actions) => this.act([{type: 'key', id: 'keys', actions}]);
    const down = (key) => ({type: 'keyDown', value: sign_of(key)}), up = (key) => ({type: 'keyUp', value: sign_of(key)});
    // As playwright has it, as much of it as a hand needs.
    this.page = {
      evaluate,
      waitForSelector: (selector) => until(() => evaluate((at) => document.querySelector(at) !== null, selector),
                                           () => `there is no ${selector}`),
      keyboard: {
        down: (key) => keys(down(key)),
        up: (key) => keys(up(key)),
        press: (chord) => {
          const all = chord.split('+');
          return keys(...all.map(down), ...all.map(up).reverse());
        },
        insertText: async (text) => { for (const letter of text) await keys(down(letter), up(letter)); },
      },
    };
  }

  get most_fingers() { return this.wire.pointer === 'touch' ? 5 : 1; }

  async visit(url) {
    await this.wire.go(url);
    let words = '';
    const now = () => (document.querySelector('body.ready canvas[aria-busy=false]') ? ''
      : `${document.getElementById('words').textContent} ${window.slabsideSaid.join('\n')}`);
    const comes = async () => { // a page that another one is taking the place of gives no answer
      words = await this.page.evaluate(now).catch((error) => `${error}`);
      return words === '';
    };
    await until(comes, () => `the page does not come: ${words}`);
    await this.rest();
    await until(() => this.page.evaluate(() => document.hasFocus()), () => 'the page does not get the keys');
  }
  rest() {
    return until(() => this.page.evaluate(() => window.slabsideIsAtRest()), () => 'the page does not come to rest');
  }

  heard() { return this.page.evaluate(() => ({...window.slabsideHeard})); }
  // Done when the page has heard the last of them.
  async act([source]) {
    const kind = source.actions.at(-1).type.toLowerCase(), before = await this.heard();
    await this.wire.act([source]);
    const wanted = before[kind] + source.actions.filter(({type}) => type.toLowerCase() === kind).length;
    await until(async () => (await this.heard())[kind] >= wanted, () => `the page does not hear ${kind}`);
  }
  point(finger, ...actions) {
    const {pointer} = this.wire;
    return this.act([{type: 'pointer', id: `finger ${finger}`, parameters: {pointerType: pointer}, actions}]);
  }
  // Where a finger slides off the glass, these engines follow it to the edge only.
  to(at) {
    const [x, y] = at.map((px) => Math.max(0, Math.round(px)));
    return {type: 'pointerMove', x, y, duration: 0};
  }
  down(at, finger = 0) { return this.point(finger, this.to(at), {type: 'pointerDown', button: 0}); }
  move(at, finger = 0) { return this.point(finger, this.to(at)); }
  up(finger = 0) { return this.point(finger, {type: 'pointerUp', button: 0}); }
  async tap(at) {
    await this.down(at);
    await this.up();
  }
}
