/** On every page: keeps the guide for the bank, where there is no signal. A page opened from disk needs no keeping. */
if ("serviceWorker" in navigator && /^https?:$/.test(location.protocol)) {
  const script = document.currentScript as HTMLScriptElement;
  // Where a browser will not keep anything, such as in a private window, the guide is read as any other site.
  navigator.serviceWorker.register(new URL("../sw.js", script.src)).catch(() => undefined);
}
