import type { Page } from "playwright-core";

/** Opens a site once, waits until its service worker has it, and takes the network away. */
export async function goOffline(
  page: Page,
  server: { readonly address: string; close(): Promise<unknown> },
): Promise<void> {
  await page.goto(server.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.context().setOffline(true);
  await server.close();
}
