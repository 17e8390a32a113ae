import { randomUUID } from "node:crypto";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { extname } from "node:path";
import { formatReport } from "../../checks/reporter.ts";
import type { Message } from "../../model/message.ts";
import { linesOnDisk } from "../tell.ts";
import { watchSaves } from "../watch/saves.ts";
import { client, style } from "./client.ts";
import type { PreviewSession } from "./session.ts";

/** Media types. Source: the IANA registry. */
const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".pdf": "application/pdf",
  ".woff": "font/woff",
  ".xml": "application/xml",
  ".txt": "text/plain; charset=utf-8",
};

interface Preview {
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Serves a guide on this machine alone, and shows each change of its folders in the pages that are open.
 *
 * @param port 0 for any that is free
 * @param told hears of each new content what is wrong with it
 * @throws Error where the port is taken
 */
export async function startPreview(
  session: PreviewSession,
  folders: readonly string[],
  port: number,
  told: (errors: readonly Message[]) => void = () => {},
): Promise<Preview> {
  const pages = new OpenPages(session, told);
  const server = createServer((request, response) => {
    answer(request, response, session, pages).catch((error) =>
      end(response, 500, ".txt", `${error.message ?? error}\n`),
    );
  });
  await new Promise<void>((started, failed) => {
    server.once("error", failed);
    server.listen(port, "127.0.0.1", started);
  });
  const watched = await watchSaves(folders, {
    look: () => pages.refresh(),
    lookAgain: () => pages.lookAgain(),
  });
  await pages.ready;
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: async () => {
      await watched.close();
      pages.close();
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
  };
}

/** The pages that are open in browsers, and what they are told. */
class OpenPages {
  /** Once what was saved last has been read. */
  ready: Promise<unknown>;
  /** Once all that was looked at has been read. */
  #read: Promise<unknown>;
  readonly #run = randomUUID();
  readonly #open = new Set<ServerResponse>();

  constructor(
    private readonly session: PreviewSession,
    private readonly told: (errors: readonly Message[]) => void,
  ) {
    this.#read = Promise.resolve();
    this.ready = this.lookAgain();
  }

  /** What a page is made from, by which it knows whether there is something newer. */
  get stamp(): string {
    return `${this.#run}-${this.session.version}`;
  }

  /** Reads what was saved, and tells all pages; a page that is asked for meanwhile waits for it. */
  refresh(): void {
    this.ready = this.lookAgain();
  }

  /** The same, and nobody waits for it: there is seldom anything new. */
  lookAgain(): Promise<unknown> {
    // What could not be read once may be read the next time.
    const refreshed = this.#read.catch(() => {}).then(() => this.session.refresh());
    this.#read = refreshed;
    const tellAll = (isNew: boolean) => {
      if (!isNew) return;
      this.told(this.session.errors);
      for (const response of this.#open) this.#tell(response);
    };
    refreshed.then(tellAll, () => {});
    return refreshed;
  }

  /** A page that was made from what has this stamp listens from now on. */
  add(response: ServerResponse, seen: string): void {
    response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
    this.#open.add(response);
    response.on("close", () => this.#open.delete(response));
    this.#tell(response, seen);
  }

  #tell(response: ServerResponse, seen?: string): void {
    const { errors } = this.session;
    if (errors.length > 0) send(response, "wrong", formatReport(errors, linesOnDisk()));
    else if (seen !== this.stamp) send(response, "fresh", "");
  }

  close(): void {
    for (const response of this.#open) response.end();
  }
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  session: PreviewSession,
  pages: OpenPages,
): Promise<void> {
  if (!isHere(request.headers.host))
    return end(response, 403, ".txt", "this preview is for this machine alone\n");
  const asked = addressOf(request.url);
  if (!asked) return end(response, 400, ".txt", `this is no address: ${request.url}\n`);
  const { pathname, search } = asked;
  await pages.ready;
  if (pathname === "/preview/events") return pages.add(response, search.slice(1));
  if (pathname === "/preview/client.js") return end(response, 200, ".js", `(${client})();\n`);
  if (pathname === "/preview/style.css") return end(response, 200, ".css", style);
  const path = `site${pathname.replace(/\/$/, "/index.html")}`;
  // What is read meanwhile is not on the page yet.
  const { stamp } = pages;
  const file = await session.file(path);
  if (!file && session.solved) return end(response, 404, ".txt", `the guide has no ${path}\n`);
  const content = file?.content ?? "<!doctype html><html><head></head><body></body></html>";
  if (file && !path.endsWith(".html")) return end(response, 200, extname(path), content);
  return end(response, 200, ".html", withClient(String(content), path, session, stamp));
}

/** A page that shows what is wrong, and loads itself anew. */
function withClient(html: string, path: string, session: PreviewSession, stamp: string): string {
  const style = '<link rel="stylesheet" href="/preview/style.css">';
  return html
    .replace("</head>", `${style}<script src="/preview/client.js?${stamp}"></script></head>`)
    .replace("</body>", `${cardOf(path, session)}</body>`);
}

/** Where on the site an address leads, as people read it; undefined where it is written as none may be. */
function addressOf(url = "/"): { readonly pathname: string; readonly search: string } | undefined {
  try {
    const { pathname, search } = new URL(url, "http://localhost");
    return { pathname: decodeURI(pathname), search };
  } catch {
    return undefined;
  }
}

/** Another name for this machine may be a page elsewhere that wants to read along. */
const isHere = (host = "") => /^(?:127\.0\.0\.1|localhost)(?::\d+)?$/.test(host);

function send(response: ServerResponse, event: string, data: string): void {
  response.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
}

function end(response: ServerResponse, status: number, ending: string, content: string | Uint8Array): void {
  const type = types[ending] ?? "application/octet-stream";
  response.writeHead(status, { "content-type": type, "cache-control": "no-store" });
  response.end(content);
}

/** Both sides of the card beside the page of a rig. */
function cardOf(path: string, { solved }: PreviewSession): string {
  const id = /^site\/rigs\/(.+)\.html$/.exec(path)?.[1];
  const rig = solved?.rigs.find((one) => one.rig.id === id);
  if (!rig) return "";
  const sides = ["front", "back"].map((side) => `<img src="/previews/${id}-${side}.png" alt="">`);
  return `<aside class="preview-card">${sides.join("")}</aside>`;
}
