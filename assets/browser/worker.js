// Keeps one version of all files together, and serves it without a network. A new version waits until
// every tab of the old one is closed or somebody takes it, so that no tab has files of both.
'use strict';

const name = 'slabside-@version@';
const files = ['./', @files@];

self.addEventListener('install', (event) =>
  event.waitUntil(caches.open(name).then((cache) =>
    cache.addAll(files.map((file) => new Request(file, {cache: 'no-cache'})))
      .catch((error) => caches.delete(name).then(() => { throw error; })))));

self.addEventListener('activate', (event) =>
  event.waitUntil(caches.keys().then((names) => Promise.all(
    names.filter((other) => other.startsWith('slabside-') && other !== name)
      .map((other) => caches.delete(other))))));

self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  if (event.request.method !== 'GET') return;
  event.respondWith(caches.open(name)
    .then((cache) => cache.match(event.request, {ignoreSearch: true}))
    .then((kept) => kept || fetch(event.request)));
});
