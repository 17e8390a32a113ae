import { dirname } from "node:path";
import { fileURLToPath } from "node:url";

/** One that another asks for. */
const table = "unicode-trie";
const besideFontkit = dirname(fileURLToPath(import.meta.resolve("fontkit")));
const fileHere = (name) => fileURLToPath(new URL(name, import.meta.url));

/**
 * What packages of the tool ask others for that few commands need: for the bundler, each stands in a file of its own here, which gets
 * it once it is used.
 */
export const later = {
  name: "later",
  setup(build) {
    build.onResolve({ filter: /^unicode-trie$/ }, ({ pluginData }) =>
      pluginData === "itself" ? undefined : { path: fileHere("unicode-trie.mjs") },
    );
    build.onResolve({ filter: /^\.\/itself$/ }, ({ kind }) =>
      build.resolve(table, { kind, resolveDir: besideFontkit, pluginData: "itself" }),
    );
    build.onResolve({ filter: /^brotli\/decompress\.js$/ }, () => ({ path: fileHere("brotli.mjs") }));
    build.onResolve({ filter: /^\.\/brotli\.cjs$/ }, ({ path }) => ({ path, external: true }));
  },
};
