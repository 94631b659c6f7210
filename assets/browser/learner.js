// The worker that learns. It runs the program once more, from what the page has compiled, and of it calls
// nothing but `learn`; how it is asked, and answers, is emscripten_call_worker's way.
'use strict';

var Module = {noInitialRun: true};
const asked = []; // before it is ready

function learn({callbackId, data}) {
  Module.slabsideLearnt = (answer) => postMessage({callbackId, finalResponse: true, data: answer}, [answer.buffer]);
  const problem = Module._malloc(data.length);
  Module.HEAPU8.set(data, problem);
  Module._learn(problem, data.length);
  Module._free(problem);
}

function begin(program) {
  Module.instantiateWasm = (imports, receive) => {
    WebAssembly.instantiate(program, imports).then((instance) => receive(instance, program))
      .catch((error) => setTimeout(() => { throw error; })); // so that the page hears of it
    return {};
  };
  Module.onRuntimeInitialized = () => {
    onmessage = (event) => learn(event.data);
    asked.forEach(learn);
  };
  importScripts('slabside.js');
}

onmessage = ({data}) => {
  if (data instanceof WebAssembly.Module) begin(data);
  else asked.push(data);
};
