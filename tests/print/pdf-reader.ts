/**
 * The reader of PDF files. As it comes it mends, for the whole process and slowly, what it takes for faults of the engine;
 * tests share their process, so everything else in it keeps the engine's own.
 */
const own = { push: Array.prototype.push, stringify: JSON.stringify };
const reader = await import("pdfjs-dist/legacy/build/pdf.mjs");
// It would be read, and mend the same again, with the first file.
// @ts-expect-error It has no types.
await import("pdfjs-dist/legacy/build/pdf.worker.mjs");
Object.assign(Array.prototype, { push: own.push });
Object.assign(JSON, { stringify: own.stringify });

export const { getDocument, OPS } = reader;
