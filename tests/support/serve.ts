import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { gzipSync } from "node:zlib";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".svg": "image/svg+xml",
  ".woff": "font/woff",
  ".webmanifest": "application/manifest+json",
  ".pdf": "application/pdf",
};

const packed = /^text|xml$|json$/;

/** Serves a folder on a free port of this machine, text packed as web servers send it, until closed. */
export async function serveFolder(folder: string): Promise<{ address: string; close: () => Promise<void> }> {
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url!, "http://localhost").pathname);
    const file = join(folder, normalize(path.endsWith("/") ? `${path}index.html` : path));
    try {
      const content = await readFile(file);
      const type = types[extname(file)] ?? "application/octet-stream";
      const packs = packed.test(type) && /\bgzip\b/.test(String(request.headers["accept-encoding"]));
      response.writeHead(200, { "content-type": type, ...(packs && { "content-encoding": "gzip" }) });
      response.end(packs ? gzipSync(content) : content);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((closed) => {
        server.closeAllConnections();
        server.close(() => closed());
      }),
  };
}
