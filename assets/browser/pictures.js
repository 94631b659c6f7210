// Photos: picked by the browser's own way to camera and files, kept in the store under the SHA-256 of their
// bytes, decoded by its engine.
'use strict';

Slabside.pictures = {
  picked: new Map(), // each as the program names it
  count: 0,          // of all times: two may be called the same

  // Without a `capture`, a tablet offers its camera and its files alike.
  pick: function (tell) {
    const pictures = Slabside.pictures, input = document.getElementById('picture-file');
    input.onchange = () => {
      const files = Array.from(input.files);
      input.value = ''; // the same may be picked again
      tell(files.map(pictures.take));
    };
    input.click();
  },
  take: function (file) {
    const pictures = Slabside.pictures, name = `${++pictures.count}/${file.name.replace(/[/\n]/g, ' ')}`;
    pictures.picked.set(`file:${name}`, file);
    return name;
  },

  whole: async function (image) {
    const file = Slabside.pictures.picked.get(image);
    if (file) return new Uint8Array(await file.arrayBuffer());
    const bytes = image.startsWith('photos/') ? await Slabside.store.read(image) : [];
    if (bytes.length === 0) throw new Error('gone');
    const digits = image.slice('photos/'.length, image.lastIndexOf('.'));
    if (Slabside.sha256(bytes) !== digits) throw new Error('changed');
    return bytes;
  },
  bytes_of: async (image) => ({bytes: await Slabside.pictures.whole(image)}),

  // Kept once, however often. What it answers are the digits of its name.
  keep: async function (image, ending) {
    const bytes = await Slabside.pictures.whole(image), digits = Slabside.sha256(bytes);
    const {stayed} = await Slabside.store.join([[`photos/${digits}.${ending}`, bytes]]).catch((error) => {
      throw error.name === 'QuotaExceededError' ? new Error('full') : error;
    });
    if (stayed.length > 0) throw new Error('EEXIST');
    return {bytes: new TextEncoder().encode(digits)};
  },

  // Turned upright and made sRGB by the engine; smaller by a whole number each way, or so long at most.
  pixels_of: async function (bytes, by, longest) {
    const picture = await createImageBitmap(new Blob([bytes]), {imageOrientation: 'from-image'})
        .catch(() => { throw new Error('damaged'); });
    const side = Math.max(picture.width, picture.height);
    const scale = longest > 0 ? Math.min(1, longest / side) : 1 / by;
    const canvas = document.createElement('canvas');
    canvas.width = Math.ceil(picture.width * scale);
    canvas.height = Math.ceil(picture.height * scale);
    const context = canvas.getContext('2d', {willReadFrequently: true});
    context.imageSmoothingQuality = 'high';
    context.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    const {data, width, height} = context.getImageData(0, 0, canvas.width, canvas.height);
    canvas.width = canvas.height = 0; // some tablets keep a canvas's memory for long
    return {bytes: data, width, height};
  },
};

Module.slabsidePictures = Slabside.pictures;
