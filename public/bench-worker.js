// Keeps the bench page and its parts, so that it opens where there is no network. What is entered never passes through
// here: the page keeps that in its own store. Plain JavaScript, served as it stands.
const KEPT = 'edgekeep-bench-1';
const PAGE = '/bench';
const PATIENCE_MS = 4000;

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(KEPT)
      .then((cache) => cache.add(new Request(PAGE, { cache: 'reload' })))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  const old = caches.keys().then((keys) => keys.filter((key) => key.startsWith('edgekeep-bench-') && key !== KEPT));
  event.waitUntil(
    old.then((keys) => Promise.all(keys.map((key) => caches.delete(key)))).then(() => self.clients.claim()),
  );
});

// The page tells which parts it was made of: they are kept with it.
self.addEventListener('message', (event) => {
  const parts = Array.isArray(event.data?.keep) ? event.data.keep : [];
  event.waitUntil(
    caches.open(KEPT).then((cache) =>
      Promise.all(
        parts.map(async (part) => {
          if (!(await cache.match(part))) await cache.add(part).catch(() => undefined);
        }),
      ),
    ),
  );
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin) return;
  if (request.mode === 'navigate' && url.pathname === PAGE) event.respondWith(page(request));
  else if (isPart(url.pathname)) event.respondWith(part(request));
});

// The network's page where there is one; the kept one where there is none, or it takes too long.
async function page(request) {
  const cache = await caches.open(KEPT);
  try {
    const fresh = await fetch(request, { signal: AbortSignal.timeout(PATIENCE_MS) });
    if (fresh.ok && !fresh.redirected) await cache.put(PAGE, fresh.clone());
    return fresh;
  } catch (error) {
    const kept = await cache.match(PAGE);
    if (kept) return kept;
    throw error;
  }
}

function isPart(path) {
  return path.startsWith('/_next/static/') || path.startsWith('/bench/scan/') || path === '/bench/scan-worker.js';
}

// Parts carry their content or their version in their names: what was kept is right. Only scan-worker.js carries the version of
// what it loads: whoever changes it changes KEPT too.
async function part(request) {
  const cache = await caches.open(KEPT);
  const kept = await cache.match(request);
  if (kept) return kept;
  const fresh = await fetch(request);
  if (fresh.ok) await cache.put(request, fresh.clone());
  return fresh;
}
