/** Loads a script by adding it to the page: opened from disk, a page can neither import nor fetch one. */
export function loadScript(address: string): Promise<void> {
  return new Promise((loaded, failed) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => loaded());
    script.addEventListener("error", () => failed(new Error(`${address} cannot be loaded`)));
    document.head.append(script);
  });
}
