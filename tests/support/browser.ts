import { setTimeout as wait } from "node:timers/promises";
import chromium from "@sparticuz/chromium";
import { type Browser, type BrowserContext, chromium as engine } from "playwright-core";

/** How long a page may take to show what a test waits for, on a machine with twenty other things to do [ms]. */
const patienceMs = 120_000;

/** A browser as a test file has it. */
export type TestBrowser = Pick<Browser, "newContext" | "newPage" | "close">;

/** Its pages are waited for so long, whatever is asked of them; closing it closes them. */
function lent(browser: Browser): TestBrowser {
  const contexts: BrowserContext[] = [];
  const newContext: Browser["newContext"] = async (options) => {
    const context = await browser.newContext(options);
    context.setDefaultTimeout(patienceMs);
    contexts.push(context);
    return context;
  };
  return {
    newContext,
    newPage: async (options) => (await newContext(options)).newPage(),
    close: async () => {
      for (const context of contexts) await context.close();
    },
  };
}

/** Test files that share their modules share it; it goes with their process. */
let running: Promise<Browser> | undefined;

async function launch(debuggingPort?: number): Promise<Browser> {
  return engine.launch({
    executablePath: await chromium.executablePath(),
    timeout: patienceMs,
    args: [
      "--headless=shell",
      "--no-sandbox",
      "--no-zygote",
      "--disable-gpu",
      "--font-render-hinting=none",
      ...(debuggingPort === undefined ? [] : [`--remote-debugging-port=${debuggingPort}`]),
    ],
  });
}

/**
 * Lends the packaged browser, or says why it cannot run here. Tests that need it are counted as skipped then:
 *
 *     const started = await startBrowser();
 *     describe.skipIf("reason" in started)(`in a browser${"reason" in started ? `: ${started.reason}` : ""}`, …)
 *
 * With a port, a tool that measures pages can join in there, in a browser of its own.
 */
export async function startBrowser(
  debuggingPort?: number,
): Promise<{ browser: TestBrowser } | { reason: string }> {
  let reason = "";
  // Another test file may still be unpacking the browser, so a first failure is not the last word.
  for (let attempt = 0; attempt < 3; attempt++) {
    try {
      if (debuggingPort !== undefined) return { browser: await launch(debuggingPort) };
      running ??= launch();
      return { browser: lent(await running) };
    } catch (error) {
      running = undefined;
      reason = String(error instanceof Error ? error.message : error).split("\n")[0]!;
      await wait(1500);
    }
  }
  process.stderr.write(`The packaged browser does not run here, so its tests are skipped: ${reason}\n`);
  return { reason };
}
