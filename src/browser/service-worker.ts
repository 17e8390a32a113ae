/**
 * Keeps the whole guide on the phone after the first visit. The build writes the list of files and a name for this
 * edition in front of this script, so a new edition is a new script and gets a cache of its own.
 */
declare const guideFiles: readonly string[];
declare const guideEdition: string;

const worker = self as unknown as ServiceWorkerScope;
const cacheName = `guide-${guideEdition}`;

worker.addEventListener("install", (event) => {
  event.waitUntil(
    (async () => {
      const cache = await caches.open(cacheName);
      await cache.addAll(guideFiles.map((file) => new Request(file, { cache: "reload" })));
      await worker.skipWaiting();
    })(),
  );
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(
    (async () => {
      for (const name of await caches.keys()) {
        if (name.startsWith("guide-") && name !== cacheName) await caches.delete(name);
      }
      await worker.clients.claim();
    })(),
  );
});

worker.addEventListener("fetch", (event) => {
  if (event.request.method === "GET") event.respondWith(answer(event.request));
});

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  const url = new URL(request.url);
  if (url.pathname.endsWith("/")) url.pathname += "index.html";
  // The address of a page holds its state; the file is the same.
  const kept = await cache.match(url, { ignoreSearch: true });
  if (kept) return kept;
  // What was too large to keep from the start, such as a handout, is kept once somebody asked for it.
  const fetched = await fetch(request);
  if (fetched.ok && url.origin === location.origin) await cache.put(url, fetched.clone());
  return fetched;
}

/** What is used here of the service worker's own global scope, which the DOM's types leave out. */
interface ServiceWorkerScope {
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", listener: (event: LifeEvent) => void): void;
  addEventListener(type: "fetch", listener: (event: FetchEventLike) => void): void;
}

interface LifeEvent {
  waitUntil(work: Promise<unknown>): void;
}

interface FetchEventLike {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
