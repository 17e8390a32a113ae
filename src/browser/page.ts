/** On every page: keeps the guide for the bank, where there is no signal. A page opened from disk needs no keeping. */
if ("serviceWorker" in navigator && /^https?:$/.test(location.protocol)) {
  const script = document.currentScript as HTMLScriptElement;
  navigator.serviceWorker.register(new URL("../sw.js", script.src));
}
