/** Where the site begins: the page scripts stand in a folder of it. */
export const siteAddress = new URL("../", (document.currentScript as HTMLScriptElement).src);
