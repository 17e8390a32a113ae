/** On every page: keeps the guide for the bank, where there is no signal. A page opened from disk needs no keeping. */
if ("serviceWorker" in navigator && /^https?:$/.test(location.protocol)) {
  const script = document.currentScript as HTMLScriptElement;
  const { serviceWorker } = navigator;
  // Where a browser will not keep anything, such as in a private window, the guide is read as any other site.
  const registered = serviceWorker.register(new URL("../sw.js", script.src)).catch(() => undefined);
  // A page that was left may stay listed for a while, and would keep a new edition waiting.
  addEventListener("pagehide", () => serviceWorker.controller?.postMessage("leaves"));
  addEventListener("pageshow", ({ persisted }) => {
    if (persisted) serviceWorker.controller?.postMessage("comes back");
  });
  if (serviceWorker.controller) {
    // A page that was just opened shows a new edition that waits; one that is being read is left alone.
    serviceWorker.addEventListener("controllerchange", () => location.reload());
    addEventListener("load", async () => {
      if ((await registered)?.waiting) serviceWorker.controller?.postMessage("make way");
    });
  }
}
