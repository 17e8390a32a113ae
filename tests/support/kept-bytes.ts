import type { Page } from "playwright-core";

/** Bytes of all that the open page's browser keeps of the guide. */
export function keptBytes(page: Page): Promise<number> {
  return page.evaluate(async () => {
    let bytes = 0;
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        bytes += (await (await cache.match(request))!.arrayBuffer()).byteLength;
      }
    }
    return bytes;
  });
}
