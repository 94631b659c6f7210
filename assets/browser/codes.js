// The code on a label. What draws it is fetched when a label is wanted; worker.js keeps it for use without a network.
'use strict';

Slabside.codes = {
  coming: null, // a promise of it, once somebody has asked

  fetch: function () {
    const codes = Slabside.codes;
    codes.coming ??= new Promise((done, failed) => {
      const script = document.createElement('script');
      script.src = Module.locateFile('qrcode.js');
      script.onload = done;
      script.onerror = () => {
        script.remove();
        codes.coming = null; // the next one asks again
        failed(new Error(script.src));
      };
      document.head.append(script);
    });
    return codes.coming;
  },

  // Row by row, 1 where it is dark. At level M, like the program's on a computer.
  of: function (text) {
    const as_small_as_can_be = 0, code = qrcode(as_small_as_can_be, 'M');
    qrcode.stringToBytes = qrcode.stringToBytesFuncs['UTF-8'];
    code.addData(text);
    code.make();
    const side = code.getModuleCount();
    return Uint8Array.from({length: side * side}, (_, i) => Number(code.isDark(Math.floor(i / side), i % side)));
  },
};

Module.slabsideCodes = Slabside.codes;
