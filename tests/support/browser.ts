import { setTimeout as wait } from "node:timers/promises";
import chromium from "@sparticuz/chromium";
import { type Browser, chromium as engine } from "playwright-core";

/** How long a page may take to show what a test waits for, on a machine with twenty other things to do [ms]. */
const patienceMs = 120_000;

/** A browser whose pages are waited for so long, whatever is asked of them. */
function patient(browser: Browser): Browser {
  const newContext = browser.newContext.bind(browser);
  browser.newContext = async (options) => {
    const context = await newContext(options);
    context.setDefaultTimeout(patienceMs);
    return context;
  };
  return browser;
}

/**
 * Starts the packaged browser, or says why it cannot run here. Tests that need it are counted as skipped then:
 *
 *     const started = await startBrowser();
 *     describe.skipIf("reason" in started)(`in a browser${"reason" in started ? `: ${started.reason}` : ""}`, …)
 *
 * With a port, a tool that measures pages can join in there.
 */
export async function startBrowser(
  debuggingPort?: number,
): Promise<{ browser: Browser } | { reason: string }> {
  let reason = "";
  // Another test file may still be unpacking the browser, so a first failure is not the last word.
  for (let attempt = 0; attempt < 3; attempt++) {
    try {
      const executablePath = await chromium.executablePath();
      const browser = await engine.launch({
        executablePath,
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
      return { browser: patient(browser) };
    } catch (error) {
      reason = String(error instanceof Error ? error.message : error).split("\n")[0]!;
      await wait(1500);
    }
  }
  process.stderr.write(`The packaged browser does not run here, so its tests are skipped: ${reason}\n`);
  return { reason };
}
