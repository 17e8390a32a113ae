import { namedFiles } from "../model/named-files.ts";

/**
 * Keeps on the phone, after the first visit, what the build chose of the guide, and the other pages and files once somebody
 * has opened them. The build writes the list of files, each with its hash, and a name for this edition in front of this
 * script, so a new edition is a new script and gets a cache of its own. A script answers from its own cache only, and the
 * next takes over when no page of this one is open any more, or when the only one was just opened, which loads itself
 * anew then: no page ever meets the data of another edition.
 */
declare const guideFiles: FileHashes;
/** Too much to keep from the start: kept once somebody asked for it. */
declare const guideFilesOnDemand: FileHashes;
declare const guideEdition: string;

/** The start of each file's SHA-256, by its address below the guide. */
type FileHashes = Readonly<Record<string, string>>;

const worker = self as unknown as ServiceWorkerScope;
const { scope } = worker.registration;
/** Several guides may be served from one host; each knows its own by the address it is served at. */
const cachesOfGuide = `guide ${scope} `;
const cacheName = cachesOfGuide + guideEdition;
const onDemand = new Map(
  Object.entries(guideFilesOnDemand).map(([file, hash]) => [new URL(file, scope).href, hash]),
);

const takeOver = "take over";

/** What a page that was just opened asks of its worker where a new edition waits. */
const makeWay = "make way";

/** What a page tells as it is left, and as it is come back to. */
const leaves = "leaves";
const comesBack = "comes back";

/** The pages that were left: work still going on beside one may keep it listed for seconds. */
const left = new Set<string>();

worker.addEventListener("install", (event) => event.waitUntil(keepAll()));

worker.addEventListener("activate", (event) => {
  event.waitUntil(
    (async () => {
      for (const name of await caches.keys()) {
        if (name.startsWith(cachesOfGuide) && name !== cacheName) await caches.delete(name);
      }
      await worker.clients.claim();
    })(),
  );
});

worker.addEventListener("message", (event) => {
  if (event.data === takeOver) void worker.skipWaiting();
  if (event.data === makeWay) event.waitUntil(giveWay());
  if (event.data === leaves) left.add(event.source.id);
  if (event.data === comesBack) left.delete(event.source.id);
});

worker.addEventListener("fetch", (event) => {
  if (event.request.method === "GET") event.respondWith(answer(event));
});

/** All of the edition or nothing: a server in the middle of an upload has files of two, and is asked again next time. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(cacheName);
  try {
    await Promise.all(
      Object.entries(guideFiles).map(([file, hash]) => keep(new URL(file, scope).href, hash, cache)),
    );
  } catch (error) {
    await caches.delete(cacheName);
    throw error;
  }
  await keepAsBefore(cache);
}

/** @throws Error where the server has not what this edition has at the address */
async function keep(address: string, hash: string, cache: Cache): Promise<void> {
  const response = await fetch(address, { cache: "reload" });
  const bytes = await response.arrayBuffer();
  if (!response.ok || (await hashOf(bytes)) !== hash) throw new Error(`${address} is not of this edition`);
  await cache.put(address, responseOf(bytes, response));
  if (address.endsWith(".html")) await keepNamed(bytes, cache);
}

/** What somebody opened in the edition before, or asked to be kept, is kept of this one too, as far as it comes. */
async function keepAsBefore(cache: Cache): Promise<void> {
  for (const name of await caches.keys()) {
    if (!name.startsWith(cachesOfGuide) || name === cacheName) continue;
    for (const { url } of await (await caches.open(name)).keys()) {
      const hash = onDemand.get(url);
      if (hash !== undefined) await keep(url, hash, cache).catch(() => {});
    }
  }
}

/** A page's figures and pictures, where they wait for somebody to open it. */
async function keepNamed(page: ArrayBuffer, cache: Cache): Promise<void> {
  for (const name of namedFiles(new TextDecoder().decode(page))) {
    const address = new URL(name, scope).href;
    const hash = onDemand.get(address);
    if (hash !== undefined && !(await cache.match(address))) await keep(address, hash, cache);
  }
}

/** Lets the edition that waits take over, unless another page of this one is being read. */
async function giveWay(): Promise<void> {
  if (await isOnlyPage()) worker.registration.waiting?.postMessage(takeOver);
}

async function answer(event: FetchEventLike): Promise<Response> {
  const { request } = event;
  const cache = await caches.open(cacheName);
  const url = new URL(request.url);
  if (url.pathname.endsWith("/")) url.pathname += "index.html";
  // The address of a page holds its state; the file is the same.
  const kept = await cache.match(url, { ignoreSearch: true });
  if (kept) return kept;
  const response = await fetch(request).catch((error: unknown) => {
    if (request.mode === "navigate") return withoutSignal(url);
    if (request.destination === "image") return emptyPicture();
    throw error;
  });
  if (request.mode === "navigate" && response.status === 404) return (await notFound(cache)) ?? response;
  const address = url.origin + url.pathname;
  const hash = onDemand.get(address);
  if (hash === undefined || response.status !== 200) return response;
  const bytes = await response.arrayBuffer();
  if ((await hashOf(bytes)) === hash) {
    await cache.put(address, responseOf(bytes, response));
    // Whoever has opened a page may want it made for their water where there is no signal.
    if (request.mode === "navigate") event.waitUntil(keepNamed(bytes, cache).catch(() => {}));
  }
  return responseOf(bytes, response);
}

/** What is not here yet leads to the page that says what is; what is nowhere, to the one for that. */
function withoutSignal({ origin, pathname, search }: URL): Response {
  if (!onDemand.has(origin + pathname)) return new Response(null, { status: 404 });
  const asked = new URLSearchParams({ page: (origin + pathname).slice(scope.length) + search });
  return Response.redirect(new URL(`on-this-phone.html?${asked}`, scope).href);
}

/** What a page told as it was left comes after what the next one asks, where it still had much to do. */
const leavesWithin = { tries: 50, everyMs: 100 } as const;

async function isOnlyPage(): Promise<boolean> {
  for (let tries = 0; tries < leavesWithin.tries; tries++) {
    const open = (await worker.clients.matchAll()).filter(({ id }) => !left.has(id));
    if (open.length < 2) return true;
    await new Promise((soon) => setTimeout(soon, leavesWithin.everyMs));
  }
  return false;
}

/** In place of a small picture of something to print, which no phone keeps. */
function emptyPicture(): Response {
  const headers = { "content-type": "image/svg+xml" };
  return new Response('<svg xmlns="http://www.w3.org/2000/svg"/>', { headers });
}

/** The guide's own page for an address that is not there, whatever the server has for it. */
async function notFound(cache: Cache): Promise<Response | undefined> {
  const page = await cache.match(new URL("404.html", scope));
  return page && new Response(page.body, { status: 404, headers: page.headers });
}

/** A response of these bytes, already unpacked: the server's own may have been led elsewhere, and answers for no page. */
function responseOf(bytes: ArrayBuffer, { headers }: Response): Response {
  const plain = new Headers(headers);
  for (const name of ["content-encoding", "content-length"]) plain.delete(name);
  return new Response(bytes, { headers: plain });
}

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...hash.subarray(0, 16)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** What is used here of the service worker's own global scope, which the DOM's types leave out. */
interface ServiceWorkerScope {
  readonly registration: {
    readonly scope: string;
    readonly waiting: { postMessage(message: string): void } | null;
  };
  readonly clients: { claim(): Promise<void>; matchAll(): Promise<readonly Client[]> };
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", listener: (event: LifeEvent) => void): void;
  addEventListener(type: "message", listener: (event: MessageEventLike) => void): void;
  addEventListener(type: "fetch", listener: (event: FetchEventLike) => void): void;
}

interface LifeEvent {
  waitUntil(work: Promise<unknown>): void;
}

/** A page of the guide. */
interface Client {
  readonly id: string;
}

interface MessageEventLike extends LifeEvent {
  readonly data: unknown;
  readonly source: Client;
}

interface FetchEventLike extends LifeEvent {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
