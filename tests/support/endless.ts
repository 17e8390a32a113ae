/** Where a figure without an end stands in what came out; a tub alone may have a count without one. */
export function endless(value: unknown, path: readonly (string | number)[] = []): string | undefined {
  if (typeof value === "number")
    return Number.isFinite(value) || path.at(-1) === "count" ? undefined : path.join(".");
  if (typeof value !== "object" || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const found = endless(inner, [...path, key]);
    if (found !== undefined) return found;
  }
  return undefined;
}
