/*
 * The worker: opens the floor with no signal. The server puts four constants before this text: VERSION, PARTS
 * ({cache, pack: SHA-256 of the one answer that holds the part's text files, texts: url[], files: [url, sha256][], language?}[]:
 * first what every page needs, then what is fetched right after, then two of each language), SHELLS ([pattern, shell][]) and LANGUAGES. One cache per version,
 * filled whole or not at all, so that the parts of a page always fit together. It holds no entries and hands nothing in: it may be stopped at any moment, the slate must not.
 */
"use strict";
/* global VERSION, PARTS, SHELLS, LANGUAGES */

const PREFIX = "cellarslate-";
for (const part of PARTS) part.cache = PREFIX + part.cache;
const [FLOOR, ...REST] = PARTS;
const PART_OF = new Map(); // several for what is there in each language
for (const part of PARTS) for (const url of [...part.texts, ...part.files.map(([one]) => one)]) PART_OF.set(url, [...(PART_OF.get(url) ?? []), part]);
const nameOf = ({ cache }) => cache.slice(PREFIX.length, cache.lastIndexOf("-"));
const isWords = (part, language) => nameOf(part) === `words-${language}`;
const PATTERNS = SHELLS.map(([pattern, shell]) => [new RegExp(pattern), shell]);

self.addEventListener("install", (event) => {
  event.waitUntil(install().then(() => route(event)));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(tidy().then(() => self.clients.claim()));
});

self.addEventListener("message", (event) => {
  const { type } = event.data ?? {};
  if (type === "SKIP_WAITING") self.skipWaiting(); // only ever by a person's consent
  if (type === "VERSION") event.ports[0]?.postMessage(VERSION);
  if (type === "MISSING") event.waitUntil(missing().then((names) => event.ports[0]?.postMessage(names)));
  if (type === "KEEP_AHEAD") event.waitUntil(keepAhead(event.data.isSparing));
  if (type === "LANGUAGE") event.waitUntil(speak(event.data.language).then((is) => event.ports[0]?.postMessage(is)));
});

/* A notice of this phone (jobs/timers/notice.js) leads to the page that it names: in a tab that is open, else in a new one. */
self.addEventListener("notificationclick", (event) => {
  event.notification.close();
  const { path } = event.notification.data ?? {};
  if (path) event.waitUntil(lead(path));
});

/* The desk needs the book: where that does not answer, a page of ours says so, and not the browser's own. */
const AWAY = "/shell/away";

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (request.mode === "navigate") {
    const shell = shellFor(url.pathname);
    if (shell) event.respondWith(serve(shell));
    else if (/^\/(desk|sign-in)(\/|$)/.test(url.pathname)) event.respondWith(fetch(request).catch(() => serve(AWAY)));
    return;
  }
  if (PART_OF.has(url.pathname)) event.respondWith(serve(url.pathname));
});

/* Where the browser can, it takes a version's files out of the cache by itself: this script is not asked each time. */
async function route(event) {
  if (!event.addRoutes) return;
  const isLater = ([, [part, other]]) => part !== FLOOR && !other;
  const sourceOf = (pathname, { cache, language }) => (pathname.endsWith("woff2") || language ? { cacheName: cache } : "fetch-event");
  const later = [...PART_OF].filter(isLater).map(([pathname, [part]]) => ({ condition: { urlPattern: { pathname } }, source: sourceOf(pathname, part) }));
  const kept = ["/static/*", "/joined/*", "/data/*"].map((pathname) => ({
    condition: { urlPattern: { pathname }, requestMethod: "GET" }, source: { cacheName: FLOOR.cache },
  }));
  await event.addRoutes([...later, ...kept]).catch(() => {}); // without it all goes through the handler below
}

async function lead(path) {
  const tabs = await self.clients.matchAll({ type: "window" });
  const here = tabs.find((one) => new URL(one.url).pathname === path);
  const tab = here ?? tabs[0];
  if (!tab) return self.clients.openWindow(path);
  await tab.focus().catch(() => {}); // some phones bring no tab to the front; it stands there all the same
  return here ? null : tab.navigate(path);
}

function shellFor(path) {
  for (const [pattern, shell] of PATTERNS) {
    const match = pattern.exec(path);
    if (!match) continue;
    const url = shell.replace("$1", match[1] ?? "");
    return PART_OF.has(url) ? url : null;
  }
  return null;
}

/* What a phone could do without signal before a new version, it can after it: parts it held are fetched anew as well. */
async function install() {
  const kept = await caches.keys();
  const language = await spoken();
  const held = REST.filter((part) => isWords(part, language) || kept.some((name) => name.startsWith(`${PREFIX}${nameOf(part)}-`)));
  try {
    await Promise.all([FLOOR, ...held].map(fill));
  } catch (error) {
    await caches.delete(FLOOR.cache); // half a version is none
    throw error;
  }
}

async function fill(part) {
  if (await isWhole(part)) return;
  const cache = await caches.open(part.cache);
  await Promise.all([unpackInto(cache, part), ...part.files.map(([url, hash]) => fetchInto(cache, url, hash))]);
}

async function isWhole({ cache, texts, files }) {
  return (await caches.has(cache)) && (await (await caches.open(cache)).keys()).length === texts.length + files.length;
}

/* The language that a page put down as this phone's (kept/language in a cache of its own), else the system's, else English. */
const CHOICE = "language";
let language = null;
async function spoken() {
  if (language) return language;
  const said = await (await (await caches.open(CHOICE)).match("/kept/language"))?.text();
  const wanted = [said, ...navigator.languages].map((one) => one?.split("-")[0]);
  language = wanted.find((one) => LANGUAGES.includes(one)) ?? LANGUAGES[0];
  return language;
}

/* Another language from the next page on, once its pages are here; what its jobs say follows. */
async function speak(other) {
  const part = REST.find((one) => isWords(one, other));
  if (!part) return false;
  try {
    await fill(part);
  } catch {
    await caches.delete(part.cache); // half of it is none
    return false;
  }
  await (await caches.open(CHOICE)).put("/kept/language", new Response(other));
  language = other;
  await keepAhead(true);
  return true;
}

const ofOurs = (parts) => parts.filter((part) => !part.language || part.language === language);

/* The names of the parts that are not on the phone yet. */
async function missing() {
  await spoken();
  const found = await Promise.all(ofOurs(PARTS).map(async (part) => ((await isWhole(part)) ? [] : [nameOf(part)])));
  return found.flat();
}

/* All text files in one answer, each kept under its own address. */
async function unpackInto(cache, part) {
  const bytes = await fetchChecked(`/pack/${part.pack}`, part.pack).then((response) => response.arrayBuffer());
  const { headers, parts } = JSON.parse(new TextDecoder().decode(bytes));
  await Promise.all(
    parts.map(([url, type, text]) => cache.put(url, new Response(text, { headers: { ...headers, "Content-Type": type } }))),
  );
}

/* What is in the cache is served at once; the network is asked only for what the browser has thrown out. */
async function serve(url) {
  const parts = PART_OF.get(url);
  if (parts.length > 1) await spoken();
  const part = parts.length > 1 ? ofOurs(parts)[0] : parts[0];
  const cache = await caches.open(part.cache);
  const found = await cache.match(url, { ignoreVary: true });
  if (found) return found;
  try {
    const file = part.files.find(([one]) => one === url);
    await (file ? fetchInto(cache, ...file) : unpackInto(cache, part));
    return await cache.match(url, { ignoreVary: true });
  } catch {
    return new Response("This part of Cellarslate is not on the phone, and the book cannot be reached.\n", {
      status: 504, headers: { "Content-Type": "text/plain; charset=utf-8" },
    });
  }
}

/* No captive portal, other version or cut transfer gets into the cache. */
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
  await cache.put(url, await fetchChecked(url, hash));
}

/* Where bytes are paid for, the reader of labels waits for the first scan. */
async function keepAhead(isSparing) {
  await spoken();
  for (const part of ofOurs(REST)) {
    if (isSparing && nameOf(part) === "scan") continue;
    await fill(part).catch(() => {}); // tried again when a page opens, and when it is wanted
  }
}

async function tidy() {
  const kept = new Set(PARTS.map(({ cache }) => cache));
  for (const name of await caches.keys()) if (name.startsWith(PREFIX) && !kept.has(name)) await caches.delete(name);
}
