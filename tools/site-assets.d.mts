/** File name → content, for `site/assets/`. */
export function siteAssets(): Promise<Map<string, string | Uint8Array>>;
