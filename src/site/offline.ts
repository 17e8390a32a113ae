import { createHash, type Hash } from "node:crypto";
import { relative } from "node:path/posix";
import type { OutputFile } from "../markup/output.ts";
import type { SiteInput } from "./input.ts";

/** Gathers what a phone keeps for the bank: every file of the site, its cards too. */
export class OfflineList {
  readonly #paths: string[] = [];
  readonly #hash: Hash = createHash("sha256");
  #bytes = 0;

  constructor({ printables }: SiteInput) {
    const cards = printables.filter(({ path, kind }) => kind === "card" && path.startsWith("site/"));
    for (const { path, sizeBytes } of cards) this.#add(path, String(sizeBytes), sizeBytes);
  }

  add({ path, content }: OutputFile): void {
    this.#add(path, content, Buffer.byteLength(content));
  }

  #add(path: string, content: OutputFile["content"], bytes: number): void {
    this.#paths.push(path);
    this.#hash.update(path).update("\0").update(content).update("\0");
    this.#bytes += bytes;
  }

  /** Room that all files so far take on the phone [byte]. */
  get bytes(): number {
    return this.#bytes;
  }

  /** The service worker of this edition; `program` is its compiled script. */
  serviceWorker(program: string | Uint8Array): OutputFile {
    const files = this.#paths.map((path) => relative("site", path)).sort();
    const edition = this.#hash.digest("hex").slice(0, 16);
    const list = `var guideFiles=${JSON.stringify(files)},guideEdition=${JSON.stringify(edition)};\n`;
    return { path: "site/sw.js", content: list + program };
  }
}

/** What a phone needs to put the guide on its home screen. */
export function manifest({ library: { guide }, kit }: SiteInput): OutputFile {
  const content = {
    name: guide.title,
    short_name: kit.words("page.install-name"),
    description: kit.words("page.home.lead"),
    lang: guide.language,
    start_url: "index.html",
    scope: "./",
    display: "standalone",
    background_color: "#ffffff",
    theme_color: "#0d3b40",
    icons: [{ src: "assets/icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" }],
  };
  return { path: "site/manifest.webmanifest", content: `${JSON.stringify(content, null, 2)}\n` };
}
