// What letters are drawn with. The first faces have every letter of every sentence; the others are for names
// that somebody writes, and are fetched when a letter wants them.
'use strict';

Slabside.faces = {
  files: [['face.otf', 'face-bold.otf'], ['face-other.ttf', 'face-other-bold.ttf']],
  bytes: new Map(), // by file
  asked: false,     // for the others

  of: (bold, rank) => Slabside.faces.bytes.get(Slabside.faces.files[rank]?.[bold]),
  fetch_first: () => Slabside.faces.fetch(0, () => {}),
  // Once, and again when a network comes or the page into sight: what asks draws many times a second.
  fetch_others: function (then) {
    const {faces} = Slabside;
    if (faces.asked) return;
    faces.asked = true;
    faces.fetch(1, faces.keep).then(then, (error) => {
      console.warn(error);
      const again = new AbortController(), once = {signal: again.signal};
      const ask = () => {
        if (document.hidden) return;
        again.abort();
        faces.asked = false;
        faces.fetch_others(then);
      };
      window.addEventListener('online', ask, once);
      document.addEventListener('visibilitychange', ask, once);
    });
  },

  fetch: async function (rank, keep) {
    const {bytes, files} = Slabside.faces;
    const all = await Promise.all(files[rank].map(async (file) => {
      const answer = await fetch(Module.locateFile(file));
      if (!answer.ok) throw new Error(`${answer.url}: ${answer.status}`);
      const whole = new Uint8Array(await answer.arrayBuffer());
      await keep(answer.url, new Response(whole, {headers: answer.headers}));
      return [file, whole];
    }));
    for (const [file, whole] of all) bytes.set(file, whole);
  },
  // Where worker.js keeps this version: the first visit has no worker yet that could.
  keep: async function (place, answer) {
    try {
      const cache = await self.caches?.open(`slabside-${document.body.dataset.version}`);
      await cache?.put(place, answer);
    } catch (error) { // then the next start fetches it again
      console.warn(error);
    }
  },
};

Module.slabsideFaces = Slabside.faces;
