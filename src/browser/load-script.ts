/** Loads scripts side by side, which run one after another. */
export async function loadScripts(addresses: readonly string[]): Promise<void> {
  await Promise.all(addresses.map(loadScript));
}

/** Loads a script by adding it to the page: opened from disk, a page can neither import nor fetch one. */
export function loadScript(address: string): Promise<void> {
  return new Promise((loaded, failed) => {
    const script = document.createElement("script");
    script.src = address;
    // It runs after those that were added before it.
    script.async = false;
    script.addEventListener("load", () => loaded());
    script.addEventListener("error", () => failed(new Error(`${address} cannot be loaded`)));
    document.head.append(script);
  });
}
