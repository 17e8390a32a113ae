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
