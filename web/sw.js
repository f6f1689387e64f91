/* Opening offline: keeps the page's own files, and nothing of what was typed. FILES and STAMP are filled in by the build. */
const files = FILES;
const cacheName = `soapwater-${STAMP}`;

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(cacheName)
      .then((cache) => cache.addAll(files))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((n) => n !== cacheName).map((n) => caches.delete(n))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin) return;
  const path = url.pathname === '/' ? '/index.html' : url.pathname;
  if (path.startsWith('/photos/')) {
    // a picture is named by its hash: once seen it never changes
    event.respondWith(
      caches.open('soapwater-photos').then(async (cache) => {
        const held = await cache.match(event.request);
        if (held) return held;
        const fresh = await fetch(event.request);
        if (fresh.ok) await cache.put(event.request, fresh.clone());
        return fresh;
      }),
    );
    return;
  }
  if (!files.includes(path)) return;
  const kept = () => caches.open(cacheName).then((cache) => cache.match(path));
  // files with a hash in their name cannot change; the page itself is asked for first
  event.respondWith(
    path.startsWith('/assets/')
      ? kept().then((held) => held ?? fetch(event.request))
      : fetch(event.request).catch(() => kept().then((held) => held ?? Response.error())),
  );
});
