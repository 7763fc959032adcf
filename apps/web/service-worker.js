// Keeps the built files, so that the app opens without a network. The build fills in the two names below.
// Only files of the list are kept: never an answer of /api, never a page under the address it was asked by.
const NAME = "partsproof-__VERSION__";
const FILES = __FILES__;
const PAGE = "/index.html";

const paths = new Set(FILES);

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(NAME).then((cache) => cache.addAll(FILES)));
});

self.addEventListener("activate", (event) => {
  const old = (name) => name.startsWith("partsproof-") && name !== NAME;
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (url.pathname === "/api" || url.pathname.startsWith("/api/")) return;
  if (request.mode === "navigate") {
    // Every address is a place inside the one page. From the house while it can be reached, so that a new build is seen.
    event.respondWith(fetch(request).catch(() => caches.match(PAGE, { cacheName: NAME })));
    return;
  }
  if (!paths.has(url.pathname)) return;
  const kept = caches.match(url.pathname, { cacheName: NAME });
  event.respondWith(kept.then((found) => found ?? fetch(request)));
});
