// What the program puts on paper: a page goes to the browser's own print, anything else is saved as a file.
// The page to print is written into a frame that was loaded before, so that it can be printed within the tap
// that asked for it. The frame's own policy allows styles and pictures, and nothing in it can run.
'use strict';

Slabside.paper = {
  frame: document.getElementById('paper'),
  pictures: [], // of the page that lies in the frame: their blobs' addresses

  policy: 'meta[http-equiv="Content-Security-Policy"]',
  // A frame that lacks its policy is what a server says in place of a file that it has not.
  loaded: function () {
    const {frame, policy} = Slabside.paper, is_there = () => frame.contentDocument?.querySelector(policy);
    return new Promise((done, failed) => {
      if (is_there()) return done();
      frame.addEventListener('load', () => is_there() ? done() : failed(new Error(frame.src)), {once: true});
    });
  },

  // Its photos are in the store. One that is not there leaves its words.
  with_pictures: async function (text) {
    const paper = Slabside.paper, names = new Set(Array.from(text.matchAll(/src="(photos\/[^"]+)"/g), (found) => found[1]));
    paper.pictures.forEach((place) => URL.revokeObjectURL(place));
    paper.pictures = [];
    for (const name of names) {
      const bytes = await Slabside.store.read(name);
      const place = bytes.length > 0 ? URL.createObjectURL(new Blob([bytes])) : 'data:,';
      paper.pictures.push(place);
      text = text.replaceAll(`src="${name}"`, `src="${place}"`);
    }
    return text;
  },
  print: async function (bytes) {
    const {ready, frame, with_pictures} = Slabside.paper;
    const plain = new TextDecoder().decode(bytes);
    await ready;
    const text = plain.includes('src="photos/') ? await with_pictures(plain) : plain;
    const page = frame.contentDocument;
    page.open();
    page.write(text);
    page.close();
    const images = Array.from(page.images, (image) => image.decode().catch(() => {})); // its words are printed
    if (images.length > 0) await Promise.all(images);
    frame.contentWindow.print();
  },

  kinds: {'.html': 'text/html', '.csv': 'text/csv', '.svg': 'image/svg+xml'},
  // Some browsers of tablets cannot print: they save the page.
  put: async function (stem, ending, bytes) {
    const paper = Slabside.paper, printed = ending === '.html' && Boolean(window.print);
    const name = printed ? stem : stem + ending;
    try {
      if (printed) await paper.print(bytes);
      else Slabside.save(new File([bytes], name, {type: paper.kinds[ending]}));
      return {name, printed, why: ''};
    } catch (error) {
      return {name, printed, why: error.message || error.name};
    }
  },
};

Slabside.paper.ready = Slabside.paper.loaded();
Slabside.paper.ready.catch((error) => console.warn(error));
Module.slabsidePaper = Slabside.paper.put;
