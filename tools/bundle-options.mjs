import { later } from "./later/later.mjs";

/** How everything that runs on Node is bundled: packages from npm stay outside. */
export const nodeBundle = {
  bundle: true,
  packages: "external",
  // The element tree's runtime is ours, so it goes into the bundle whatever name it is imported by.
  alias: { "#jsx/jsx-runtime": "./src/markup/jsx-runtime.ts" },
  platform: "node",
  target: "node20",
  format: "esm",
  logLevel: "warning",
};

/**
 * How the tool is bundled: with the packages that are many small scripts, as finding and opening them takes longer than
 * reading what is in them. Those stay outside that are no scripts alone, that few commands load, or that look for files of
 * their own.
 */
export const toolBundle = {
  ...nodeBundle,
  packages: undefined,
  external: ["@expo-google-fonts/*", "@resvg/resvg-js", "chokidar", "ora", "wasm-vips", "subset-font"],
  plugins: [later],
  metafile: true,
};
