import { relative } from "node:path/posix";
import type { OutputFile } from "../markup/output.ts";
import { fileHash, toldOfFile } from "./file-hash.ts";
import type { SiteInput } from "./input.ts";
import { iconOf, themeColour } from "./look.ts";

/**
 * Gathers what a phone keeps for the bank: every file of the site, and what makes cards; files to print only once they
 * were asked for.
 */
export class OfflineList {
  readonly #kept = new Map<string, string>();
  readonly #onDemand = new Map<string, string>();
  #bytes = 0;

  constructor({ printables }: SiteInput) {
    for (const { path, hash } of printables) {
      if (path.startsWith("site/")) this.#onDemand.set(path, hash);
    }
  }

  add(file: OutputFile): void {
    const { hash, sizeBytes } = toldOfFile(file);
    this.#keep(file.path, hash, sizeBytes);
  }

  addOnDemand(file: OutputFile): void {
    this.#onDemand.set(file.path, toldOfFile(file).hash);
  }

  #keep(path: string, hash: string, bytes: number): void {
    this.#kept.set(path, hash);
    this.#bytes += bytes;
  }

  /** Room that all files so far take on the phone [byte]. */
  get bytes(): number {
    return this.#bytes;
  }

  /** The service worker of this edition; `program` is its compiled script. */
  serviceWorker(program: string | Uint8Array): OutputFile {
    const files = hashList(this.#kept);
    const onDemand = hashList(this.#onDemand);
    const edition = fileHash(files + onDemand);
    const list = `var guideFiles=${files},guideFilesOnDemand=${onDemand},guideEdition=${JSON.stringify(edition)};\n`;
    return { path: "site/sw.js", content: list + program };
  }
}

/** Hashes by the addresses of their files below the site, as JSON. */
function hashList(files: ReadonlyMap<string, string>): string {
  const byAddress = [...files].map(([path, hash]) => [relative("site", path), hash] as const);
  return JSON.stringify(Object.fromEntries(byAddress.sort(([a], [b]) => (a < b ? -1 : 1))));
}

/** What a phone needs to put the guide on its home screen. */
export function manifest(input: SiteInput): OutputFile {
  const { library, kit } = input;
  const { guide } = library;
  const { path, ...icon } = iconOf(input);
  const content = {
    name: guide.title,
    short_name: kit.words("page.install-name"),
    description: kit.words("page.home.lead"),
    lang: guide.language,
    start_url: "index.html",
    scope: "./",
    display: "standalone",
    background_color: "#ffffff",
    theme_color: themeColour(guide),
    icons: [{ src: relative("site", path), ...icon, purpose: "any" }],
  };
  return { path: "site/manifest.webmanifest", content: `${JSON.stringify(content, null, 2)}\n` };
}
