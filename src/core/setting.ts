/** Where the hook is set against the bed. */
export const settings = ["dead depth", "over depth", "off bottom", "up in the water"] as const;
export type Setting = (typeof settings)[number];
