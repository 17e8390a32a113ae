import { relative } from "node:path/posix";
import type { KeptOnPhone } from "../../templates/pages/view.ts";
import type { OutputFile } from "../markup/output.ts";
import { fileHash, toldOfFile } from "./file-hash.ts";
import type { SiteInput } from "./input.ts";
import { chosenWithin, type Keepable, roomAtOnce } from "./kept-at-once.ts";
import { iconOf, themeColour } from "./look.ts";
import type { Page } from "./page.ts";

interface Listed {
  readonly hash: string;
  readonly bytes: number;
}

/**
 * What a phone keeps for the bank. Whatever every page needs is kept at once, and of the other pages, the most needed first,
 * as many as there is room for; the rest, and files to print, once somebody asked for them.
 */
export class OfflineList {
  readonly #files = new Map<string, Listed>();
  readonly #atOnce = new Set<string>();
  readonly #pages = new Map<string, Keepable>();

  constructor({ printables }: SiteInput) {
    for (const { path, hash, sizeBytes } of printables) {
      if (path.startsWith("site/")) this.#files.set(path, { hash, bytes: sizeBytes });
    }
  }

  /** What pages load; what is not kept at once comes with the first page that names it. */
  addLoaded(file: OutputFile, atOnce: boolean): void {
    this.#list(file);
    if (atOnce) this.#atOnce.add(file.path);
  }

  /** @param names files that go with it, below the site */
  addPage(file: OutputFile, names: readonly string[]): void {
    const { bytes } = this.#list(file);
    const files = names.flatMap((name) => {
      const listed = this.#files.get(`site/${name}`);
      return listed ? [[`site/${name}`, listed.bytes] as const] : [];
    });
    const page = { path: file.path, bytes, files: new Map(files) };
    this.#pages.set(file.path, page);
    if (this.#atOnce.has(file.path)) this.#keep(page);
  }

  #list(file: OutputFile): Listed {
    const { hash, sizeBytes } = toldOfFile(file);
    const listed = { hash, bytes: sizeBytes };
    this.#files.set(file.path, listed);
    return listed;
  }

  /**
   * Settles what is kept at once.
   *
   * @param needed the most needed first
   * @param toCome room for pages that are yet to be made and are kept always [byte]
   */
  choose(needed: readonly Page[], toCome: number): void {
    const none = new Map<string, number>();
    for (const { path } of needed.filter(({ kept }) => kept === "always")) {
      this.#keep(this.#pages.get(path) ?? { path, bytes: 0, files: none });
    }
    const others = needed
      .filter(({ kept }) => kept !== "always" && kept !== "once opened")
      .flatMap(({ path }) => this.#pages.get(path) ?? []);
    for (const page of chosenWithin(roomAtOnce - this.#bytes() - toCome, others)) this.#keep(page);
  }

  #keep({ path, files }: Keepable): void {
    for (const one of [path, ...files.keys()]) this.#atOnce.add(one);
  }

  #bytes(): number {
    return [...this.#atOnce].reduce((sum, path) => sum + (this.#files.get(path)?.bytes ?? 0), 0);
  }

  /** What a page can say of it; `toCome` as above. */
  told(toCome: number): KeptOnPhone {
    return {
      bytes: this.#bytes() + toCome,
      bytesOf: (path) => {
        const page = this.#pages.get(path);
        return page ? [...page.files.values()].reduce((sum, bytes) => sum + bytes, page.bytes) : 0;
      },
      isAtOnce: (path) => this.#atOnce.has(path),
    };
  }

  /** The service worker of this edition; `program` is its compiled script. */
  serviceWorker(program: string | Uint8Array): OutputFile {
    const listed = (atOnce: boolean) =>
      hashList([...this.#files].filter(([path]) => this.#atOnce.has(path) === atOnce));
    const files = listed(true);
    const onDemand = listed(false);
    const edition = fileHash(files + onDemand);
    const list = `var guideFiles=${files},guideFilesOnDemand=${onDemand},guideEdition=${JSON.stringify(edition)};\n`;
    return { path: "site/sw.js", content: list + program };
  }
}

/** Hashes by the addresses of their files below the site, as JSON. */
function hashList(files: readonly (readonly [string, Listed])[]): string {
  const byAddress = files.map(([path, { hash }]) => [relative("site", path), hash] as const);
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
