// What studios tell each other: a small file that is saved as any download is, and a friend's that is picked.
'use strict';

Slabside.told = {
  save: (name, bytes) => Slabside.save(new File([bytes], name, {type: 'application/json'})),

  // `most`: of a longer one it is enough to know that it is longer.
  pick: function (most, tell) {
    const input = document.getElementById('told-file');
    input.onchange = () => {
      const [file] = input.files;
      input.value = ''; // the same may be picked again
      if (file) Slabside.told.read(file, most).then(tell);
    };
    input.click();
  },
  read: function (file, most) {
    const about = {name: file.name, at: file.lastModified};
    return file.slice(0, most).arrayBuffer().then(
      (bytes) => ({...about, bytes: new Uint8Array(bytes), failure: ''}),
      (error) => ({...about, bytes: new Uint8Array(0), failure: `${error.name}: ${error.message}`}));
  },
};
Module.slabsideTold = Slabside.told;
