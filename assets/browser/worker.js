// Keeps one version of all files together, and serves it without a network. A new version waits until
// every tab of the old one is closed or somebody takes it, so that no tab has files of both.
'use strict';

const name = 'slabside-@version@';
const files = ['./', @files@];
const later = [@later@]; // faces.js keeps them where a letter wanted them

self.addEventListener('install', (event) =>
  event.waitUntil(Promise.all([caches.open(name), wanted_later()]).then(([cache, wanted]) =>
    cache.addAll([...files, ...wanted].map((file) => new Request(file, {cache: 'no-cache'}))))
    .catch((error) => caches.delete(name).then(() => { throw error; }))));

// What this tablet has kept of any version, it wants of this one.
async function wanted_later() {
  const names = (await caches.keys()).filter((other) => other.startsWith('slabside-'));
  const kept = await Promise.all(names.map((other) => caches.open(other).then((cache) => cache.keys())));
  const last = (address) => address.split('/').pop();
  const there = kept.flat().map((request) => last(request.url));
  return later.filter((file) => there.includes(last(file)));
}

self.addEventListener('activate', (event) =>
  event.waitUntil(caches.keys().then((names) => Promise.all(
    names.filter((other) => other.startsWith('slabside-') && other !== name)
      .map((other) => caches.delete(other))))
    .then(() => self.clients.claim()))); // else a page of the first visit would lose its files to the next version

self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  if (event.request.method !== 'GET') return;
  const wanted = event.request.destination === 'document' ? './' : event.request; // by whatever name it is asked for
  event.respondWith(caches.open(name)
    .then((cache) => cache.match(wanted, {ignoreSearch: true}))
    .then((kept) => kept || fetch(event.request)));
});
