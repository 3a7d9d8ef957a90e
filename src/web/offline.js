// The folder form of the page, kept by the browser so that it opens without a network too. Each build has a cache of its
// own name; the old one goes.
'use strict';
const kept = 'foldwright-@BUILD@';
const files = ['./', 'foldwright.wasm', 'foldwright.webmanifest'];

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(kept).then((cache) => cache.addAll(files)).then(() => self.skipWaiting()));
});
self.addEventListener('activate', (event) => {
  const drop = (names) => Promise.all(names.filter((name) => /^foldwright-/.test(name) && name !== kept)
      .map((name) => caches.delete(name)));
  event.waitUntil(caches.keys().then(drop).then(() => self.clients.claim()));
});
self.addEventListener('fetch', (event) => {
  const address = new URL(event.request.url);
  if (event.request.method !== 'GET' || address.origin !== location.origin) return;
  // index.html is "./" by another name; what stands behind # never comes here.
  const asked = address.pathname.replace(/\/index\.html$/, '/');
  event.respondWith(caches.open(kept).then((cache) => cache.match(asked)).then((found) => found || fetch(event.request)));
});
