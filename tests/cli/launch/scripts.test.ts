import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { storeOnDisk } from "../../../src/cli/kept-on-disk.ts";
import { scriptsIn } from "../../../src/cli/launch/scripts.ts";
import type { Store } from "../../../src/model/kept.ts";
import { asScript } from "../../../tools/as-script.mjs";
import { temporaryFolder } from "../../support/cli.ts";

/** Longer than what is compiled sooner than looked up. */
const long = `// ${"x".repeat(30_000)}\n`;

const modules = {
  "one.js": `import {
  two as second,
  place
} from "./two.js";
import { sep } from "node:path";
import path from "node:path";
import * as whole from "node:path";
const later = async () => (await import("./three.js")).default;
const outside = async () => (await import("fflate")).strToU8("two").length;
const fault = () => new Error().stack.split("\\n")[1];
const same = sep === path.sep && sep === whole.sep;
export { fault, later, outside, place, second as asOther, same };
`,
  "two.js": `const two = () => "½×".replace(/[½×]/g, (sign) => ({ "½": "half", "×": "times" })[sign]);
const place = import.meta.url;
export { two, place };
`,
  "three.js": `const three = 3;
export { three as default };
`,
};

function scripts(): URL {
  const folder = temporaryFolder();
  for (const [name, code] of Object.entries(modules))
    writeFileSync(join(folder, name), asScript(name, `${code}${long}`));
  return new URL(`${pathToFileURL(folder).href}/`);
}

interface One {
  readonly asOther: () => string;
  readonly fault: () => string;
  readonly later: () => Promise<number>;
  readonly outside: () => Promise<number>;
  readonly place: string;
  readonly same: boolean;
}

describe("scripts that were modules", () => {
  it("give what the modules export, of others, of the engine and of those loaded later too", async () => {
    const folder = scripts();
    const one = scriptsIn(folder).load("./one.js") as One;
    expect(one.asOther()).toBe("halftimes");
    expect(one.place).toBe(new URL("two.js", folder).href);
    expect(one.same).toBe(true);
    expect([await one.later(), await one.outside()]).toEqual([3, 3]);
  });

  it("have each line where it was, and no sign beyond ASCII", () => {
    const folder = scripts();
    const one = scriptsIn(folder).load("./one.js") as One;
    const line = modules["one.js"].split("\n").findIndex((text) => text.includes("new Error")) + 1;
    expect(one.fault()).toContain(`one.js:${line}:`);
    expect(readFileSync(new URL("two.js", folder), "utf8")).toMatch(/^[\0-\x7f]*$/);
  });
});

describe("what the engine made of scripts", () => {
  /** Loads all, and gives how many were compiled anew and what was found. */
  function loaded(folder: URL, below: Store, use = "build") {
    const told = { put: 0, found: 0 };
    const store: Store = {
      find: (...asked) => {
        const found = below.find(...asked);
        if (found) told.found++;
        return found;
      },
      put: (...given) => {
        told.put++;
        below.put(...given);
      },
    };
    const { load, keep } = scriptsIn(folder, { store, use });
    const said = (load("./one.js") as One).asOther();
    keep();
    return { ...told, said };
  }

  it("is used by the next process for the same use, and not by one for another", () => {
    const [folder, kept] = [scripts(), temporaryFolder()];
    const store = () => storeOnDisk(kept, Buffer.from("this edition"));
    expect(loaded(folder, store())).toEqual({ put: 2, found: 0, said: "halftimes" });
    expect(loaded(folder, store())).toEqual({ put: 0, found: 2, said: "halftimes" });
    expect(loaded(folder, store(), "check")).toEqual({ put: 2, found: 0, said: "halftimes" });
  });

  it("is made anew where what is kept is spoilt, or is nothing that the engine made", () => {
    const [folder, kept] = [scripts(), temporaryFolder()];
    const store = () => storeOnDisk(kept, Buffer.from("this edition"));
    loaded(folder, store());
    for (const name of readdirSync(kept)) {
      const bytes = readFileSync(join(kept, name));
      bytes[bytes.length - 9]! ^= 1;
      writeFileSync(join(kept, name), bytes);
    }
    expect(loaded(folder, store())).toEqual({ put: 2, found: 0, said: "halftimes" });
    const other: Store = { find: () => ({ value: Buffer.from("of another engine") }), put: () => {} };
    // From another folder, as the engine still knows what it compiled in this process.
    expect(loaded(scripts(), other)).toEqual({ put: 2, found: 2, said: "halftimes" });
  });
});
