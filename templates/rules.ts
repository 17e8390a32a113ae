/** Rules across tables and texts. */
export const hairline = { widthMm: 0.25, ink: "soft" } as const;
export const heavy = { widthMm: 0.5, ink: "ink" } as const;
