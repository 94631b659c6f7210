// Real buttons over the canvas, and its words as text: for who hears the screen, taps by voice, by
// switches or by keys. A finger goes through them to the canvas, where it is taken for what it does.
'use strict';

Slabside.pads = {
  all: new Map(), // id -> its button
  touched: [],    // where fingers were lifted of late
  shown: null,

  // What reads a screen aloud may press the button and touch the canvas below it, both for one tap.
  same_tap_ms: 600,
  was_touched: function (box) {
    const pads = Slabside.pads, now = performance.now();
    pads.touched = pads.touched.filter((touch) => now - touch.at < pads.same_tap_ms);
    return pads.touched.some(({x, y}) => x >= box.left && x < box.right && y >= box.top && y < box.bottom);
  },
  press: function (pad) {
    const button = Slabside.pads.all.get(pad.id);
    if (!button || Slabside.pads.was_touched(button.getBoundingClientRect())) return;
    const [x, y, w, h] = pad.box, hold_ms = pad.id === 'unlock' ? 1300 : 0;
    Module.slabsidePress(x + w / 2, y + h / 2, hold_ms);
  },

  place: function (element, [x, y, w, h]) {
    const ratio = window.devicePixelRatio || 1;
    element.style.left = `${x / ratio}px`;
    element.style.top = `${y / ratio}px`;
    element.style.width = `${w / ratio}px`;
    element.style.height = `${h / ratio}px`;
  },
  state: function (button, name, value) {
    if (value === null) button.removeAttribute(name);
    else if (button.getAttribute(name) !== value) button.setAttribute(name, value);
  },
  show_pad: function (pad) {
    const pads = Slabside.pads;
    let button = pads.all.get(pad.id);
    if (!button) {
      button = document.createElement('button');
      button.type = 'button';
      button.dataset.pad = pad.id;
      pads.all.set(pad.id, button);
    }
    button.onclick = () => pads.press(pad);
    pads.state(button, 'aria-label', pad.name);
    pads.state(button, 'aria-description', pad.counted || null);
    pads.state(button, 'aria-current', pad.here ? 'page' : null);
    pads.state(button, 'aria-pressed', pad.chosen ? 'true' : null);
    pads.place(button, pad.box);
    return button;
  },

  // Those that stay keep their element, and with it the focus.
  show: function (shown) {
    const pads = Slabside.pads, place = document.getElementById('pads');
    const there = new Set(shown.pads.map((pad) => pad.id));
    for (const [id, button] of pads.all)
      if (!there.has(id)) { button.remove(); pads.all.delete(id); }
    shown.pads.forEach((pad, i) => {
      const button = pads.show_pad(pad);
      if (place.children[i] !== button) place.insertBefore(button, place.children[i] ?? null);
    });
    pads.tell('beside', shown.words);
    // The second drop reads like the first one; the sums on the pads tell that there was one.
    const said = (told) => told?.pads.map((pad) => pad.name + pad.counted).join('\n');
    if (shown.counted !== pads.shown?.counted || said(shown) !== said(pads.shown))
      document.getElementById('counted').textContent = shown.counted;
    document.body.classList.toggle('night', shown.night);
    pads.shown = shown;
  },
  tell: function (id, words) {
    const section = document.getElementById(id);
    if (section.children.length === words.length &&
        words.every((sentence, i) => section.children[i].textContent === sentence)) return;
    section.replaceChildren(...words.map((sentence) => {
      const line = document.createElement('p');
      line.textContent = sentence;
      return line;
    }));
  },
};

for (const name of ['pointerdown', 'pointerup'])
  document.getElementById('canvas').addEventListener(name, (event) => {
    Slabside.pads.touched.push({x: event.clientX, y: event.clientY, at: performance.now()});
  });

Module.slabsideShown = (shown) => {
  Slabside.speak(shown.language);
  Slabside.pads.show(shown);
  Slabside.keeping.show(shown);
  Slabside.copy.note(shown);
};
