import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { parseArgs } from "node:util";
import { solveContent } from "../src/build/build.ts";
import { disk } from "../src/cli/disk.ts";
import { paletteCss } from "../src/drawing/palette.ts";
import { fontFamily } from "../src/drawing/svg.ts";
import { startBrowser } from "../tests/support/browser.ts";
import { figureOf, figureWidthPx, type Section, sectionsOf } from "./gallery-sections.ts";

/** How a sheet is shown to the browser, and which sections stand on it: all of them once, then some of each to compare. */
const modes = [
  { name: "phone-light", theme: "page", media: { colorScheme: "light" }, most: Number.POSITIVE_INFINITY },
  { name: "phone-dark", theme: "page", media: { colorScheme: "dark" }, most: 2 },
  { name: "phone-forced", theme: "page", media: { colorScheme: "dark", forcedColors: "active" }, most: 2 },
  { name: "paper", theme: "print", media: { media: "print", colorScheme: "light" }, most: 4 },
] as const;

const sheetPx = { width: 1400, height: 1500, gap: 16 };

/** The faces in use, in the page itself so that it can be sent to somebody. */
function fontFaces(): string {
  const folder = dirname(
    createRequire(import.meta.url).resolve("@expo-google-fonts/ibm-plex-sans/package.json"),
  );
  const face = (file: string, look: string) => {
    const data = readFileSync(join(folder, file)).toString("base64");
    return `@font-face{font-family:"${fontFamily}";${look};src:url(data:font/ttf;base64,${data})}`;
  };
  return [
    face("400Regular/IBMPlexSans_400Regular.ttf", "font-weight:400"),
    face("600SemiBold/IBMPlexSans_600SemiBold.ttf", "font-weight:600"),
    face("400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf", "font-weight:400;font-style:italic"),
  ].join("");
}

const styles = `
body{font:16px/1.4 "IBM Plex Sans",sans-serif;margin:1rem;background:var(--drawing-paper);color:var(--drawing-ink)}
section,.sheet{display:flex;flex-wrap:wrap;gap:1.5rem;align-items:flex-start}
.sheet{width:${sheetPx.width}px;gap:${sheetPx.gap}px;flex-wrap:nowrap;background:var(--drawing-paper)}
.sheet div{display:flex;flex-direction:column;gap:${sheetPx.gap}px}
figure{margin:0;max-width:100%}
figure.print{background:#fff}
svg{display:block;max-width:100%;height:auto;outline:0.3px dotted var(--drawing-faint)}
figure.page svg{width:${figureWidthPx.page}px}
figcaption{font-size:.8rem;max-width:25rem;color:var(--drawing-soft)}
@media print{h2{break-before:page}figure{break-inside:avoid}}`;

function page(body: string): string {
  const head = `<meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Gallery</title>`;
  return `<!doctype html><html lang="en"><head>${head}<style>${fontFaces()}${paletteCss()}${styles}</style></head><body>\n${body}\n</body></html>\n`;
}

const wholePage = (found: readonly Section[]) =>
  page(
    found
      .map(({ title, theme, shown }, i) => {
        const figures = shown.map((one, j) => figureOf(one, theme, `d${i}-${j}`, true).html);
        return `<h2>${title}</h2>\n<section>\n${figures.join("\n")}\n</section>`;
      })
      .join("\n"),
  );

/** Figures in columns, as many on a sheet as find room there. */
function sheetsOf(found: readonly Section[], most: number, isCaptioned: boolean): string[] {
  const sheets: string[] = [];
  let columns: { html: string[]; heightPx: number; widthPx: number }[] = [];
  const close = () => {
    if (columns.length > 0)
      sheets.push(columns.map(({ html }) => `<div>${html.join("\n")}</div>`).join("\n"));
    columns = [];
  };
  for (const [i, { shown, theme }] of found.entries()) {
    for (const [j, one] of shown.slice(0, most).entries()) {
      const figure = figureOf(one, theme, `s${i}-${j}`, isCaptioned);
      const usedPx = columns.reduce((sum, { widthPx }) => sum + widthPx + sheetPx.gap, 0);
      let column = columns.find(
        ({ heightPx, widthPx }) => widthPx === figure.widthPx && heightPx + figure.heightPx <= sheetPx.height,
      );
      if (!column) {
        if (usedPx + figure.widthPx > sheetPx.width) close();
        column = { html: [], heightPx: 0, widthPx: figure.widthPx };
        columns.push(column);
      }
      column.html.push(figure.html);
      column.heightPx += figure.heightPx + sheetPx.gap;
    }
  }
  close();
  return sheets;
}

interface Sheets {
  readonly folder: string;
  readonly isCaptioned: boolean;
  /** Of each section all in every mode. */
  readonly areAll: boolean;
}

async function shoot(found: readonly Section[], { folder, isCaptioned, areAll }: Sheets): Promise<void> {
  const started = await startBrowser();
  if ("reason" in started) throw new Error(started.reason);
  const { browser } = started;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const { name, theme, media, most } of modes) {
    const tab = await browser.newPage({ viewport: { width: sheetPx.width + 32, height: sheetPx.height } });
    await tab.emulateMedia(media);
    const sheets = sheetsOf(
      found.filter((section) => section.theme === theme),
      areAll ? Number.POSITIVE_INFINITY : most,
      isCaptioned,
    );
    await tab.setContent(page(sheets.map((sheet) => `<div class="sheet">${sheet}</div>`).join("\n")));
    await tab.evaluate(() => document.fonts.ready);
    for (const [i, sheet] of (await tab.locator(".sheet").all()).entries()) {
      const file = join(folder, `${name}-${String(i + 1).padStart(2, "0")}.png`);
      await sheet.screenshot({ path: file });
      process.stdout.write(`${file}\n`);
    }
  }
  await browser.close();
}

const { values } = parseArgs({
  options: {
    sheets: { type: "boolean" },
    bare: { type: "boolean" },
    every: { type: "boolean" },
    only: { type: "string" },
  },
});
const { value } = await solveContent(disk, ["content"]);
if (!value) throw new Error("the guide's content has errors: run the check first");
const sections = sectionsOf(value).filter(({ title }) => title.includes(values.only ?? ""));
mkdirSync("dist/gallery", { recursive: true });
writeFileSync("dist/gallery/index.html", wholePage(sections));
process.stdout.write("dist/gallery/index.html\n");
if (values.sheets) {
  await shoot(sections, {
    folder: "dist/gallery/sheets",
    isCaptioned: !values.bare,
    areAll: values.every === true,
  });
  // The browser that is lent goes with its process.
  process.exit();
}
