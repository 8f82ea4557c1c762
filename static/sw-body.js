/*
 * The worker: opens the floor with no signal. The server puts five constants before this text: VERSION, ASSETS
 * ([url, sha256] of all that a version needs), PACK (sha256 of the one answer that holds all its text files), LATER
 * ({name: [url, sha256][]}: large parts in caches of their own) and SHELLS ([pattern, shell][]). One cache per version,
 * filled whole or not at all, so that the parts of a page always fit together. It holds no entries and hands nothing in: it may be stopped at any moment, the slate must not.
 */
"use strict";
/* global VERSION, ASSETS, PACK, LATER, SHELLS */

const PREFIX = "cellarslate-";
const CACHE = `${PREFIX}shell-${VERSION}`;
const HASHES = new Map(ASSETS);
const LATER_CACHES = new Map(
  Object.entries(LATER).flatMap(([name, parts]) => {
    const cache = `${PREFIX}${name}`;
    return parts.map(([url, hash]) => [url, { cache, hash }]);
  }),
);
const PATTERNS = SHELLS.map(([pattern, shell]) => [new RegExp(pattern), shell]);

self.addEventListener("install", (event) => {
  event.waitUntil(fill().then(() => route(event)));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(tidy().then(() => self.clients.claim()));
});

self.addEventListener("message", (event) => {
  const { type } = event.data ?? {};
  if (type === "SKIP_WAITING") self.skipWaiting(); // only ever by a person's consent
  if (type === "VERSION") event.ports[0]?.postMessage(VERSION);
  if (type === "KEEP_AHEAD") event.waitUntil(keepAhead(event.data.isSparing));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (request.mode === "navigate") {
    const shell = shellFor(url.pathname);
    if (shell) event.respondWith(serve(shell, CACHE, HASHES.get(shell)));
    return;
  }
  const later = LATER_CACHES.get(url.pathname);
  if (later) event.respondWith(serve(url.pathname, later.cache, later.hash));
  else if (HASHES.has(url.pathname)) event.respondWith(serve(url.pathname, CACHE, HASHES.get(url.pathname)));
});

/* Where the browser can, it takes a version's files out of the cache by itself: this script is not asked each time. */
async function route(event) {
  if (!event.addRoutes) return;
  const later = Array.from(LATER_CACHES.keys(), (url) => ({ condition: { urlPattern: { pathname: url } }, source: "fetch-event" }));
  const kept = ["/static/*", "/joined/*", "/data/*"].map((pathname) => ({
    condition: { urlPattern: { pathname }, requestMethod: "GET" }, source: { cacheName: CACHE },
  }));
  await event.addRoutes([...later, ...kept]).catch(() => {}); // without it all goes through the handler below
}

function shellFor(path) {
  for (const [pattern, shell] of PATTERNS) {
    const match = pattern.exec(path);
    if (!match) continue;
    const url = shell.replace("$1", match[1] ?? "");
    return HASHES.has(url) ? url : null;
  }
  return null;
}

async function fill() {
  try {
    const cache = await caches.open(CACHE);
    const packed = await unpackInto(cache);
    await Promise.all(ASSETS.filter(([url]) => !packed.has(url)).map(([url, hash]) => fetchInto(cache, url, hash)));
  } catch (error) {
    await caches.delete(CACHE); // half a version is none
    throw error;
  }
}

/* All text files in one answer: on a slow network that is most of the wait. Each goes under its own address. */
async function unpackInto(cache) {
  const bytes = await fetchChecked(`/pack/${PACK}`, PACK).then((response) => response.arrayBuffer());
  const { headers, parts } = JSON.parse(new TextDecoder().decode(bytes));
  await Promise.all(
    parts.map(([url, type, text]) => cache.put(url, new Response(text, { headers: { ...headers, "Content-Type": type } }))),
  );
  return new Set(parts.map(([url]) => url));
}

/* What is in the cache is served at once; the network is asked only for what the browser has thrown out. */
async function serve(url, cacheName, hash) {
  const cache = await caches.open(cacheName);
  const found = await cache.match(url, { ignoreVary: true });
  if (found) return found;
  try {
    return await fetchInto(cache, url, hash);
  } catch {
    return new Response("This part of Cellarslate is not on the phone, and the book cannot be reached.\n", {
      status: 504, headers: { "Content-Type": "text/plain; charset=utf-8" },
    });
  }
}

/* A captive portal, an older or newer server, a cut transfer: none of them gets into the cache. */
async function fetchChecked(url, hash) {
  const response = await fetch(new Request(url, { cache: "reload", redirect: "error", credentials: "same-origin" }));
  if (response.status !== 200 || response.redirected) throw new Error(`${url} answered ${response.status}`);
  const bytes = await response.arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  const hex = [...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  if (hex !== hash) throw new Error(`${url} is not the one of this version`);
  const headers = new Headers(response.headers);
  for (const name of ["Content-Encoding", "Content-Length", "Set-Cookie", "Vary"]) headers.delete(name);
  return new Response(bytes, { status: 200, headers });
}

async function fetchInto(cache, url, hash) {
  const kept = await fetchChecked(url, hash);
  await cache.put(url, kept.clone());
  return kept;
}

/* The small parts first; on a connection that is paid by the byte the large ones wait for the first scan. */
async function keepAhead(isSparing) {
  for (const [url, { cache: name, hash }] of [...LATER_CACHES].reverse()) {
    if (isSparing && name.startsWith(`${PREFIX}scan-`)) continue;
    const cache = await caches.open(name);
    if (!(await cache.match(url))) await fetchInto(cache, url, hash).catch(() => {}); // the first scan tries again
  }
}

async function tidy() {
  const kept = new Set([CACHE, ...[...LATER_CACHES.values()].map(({ cache }) => cache)]);
  for (const name of await caches.keys()) if (name.startsWith(PREFIX) && !kept.has(name)) await caches.delete(name);
}
