/** So many of something, in English: `1 rig`, `2 rigs`. */
export const counted = (count: number, of: string): string => `${count} ${of}${count === 1 ? "" : "s"}`;
