import { lstatSync } from "node:fs";
import type { World } from "../../content/world.ts";

/** A disk's clock may have steps of two seconds: what was changed later than this may change again without a sign of it. */
const steadyMs = 3000;

/** What of a file would be another had anybody written to it; undefined where that cannot be told. */
export function stateOnDisk(file: string, nowMs = Date.now()): string | undefined {
  try {
    const { dev, ino, size, mtimeNs, ctimeNs } = lstatSync(file, { bigint: true });
    const newestMs = Math.max(...[mtimeNs, ctimeNs].map((ns) => Number(ns / 1_000_000n)));
    return nowMs - newestMs < steadyMs ? undefined : [dev, ino, size, mtimeNs, ctimeNs].join(" ");
  } catch {
    return undefined;
  }
}

/** A world of which each file is read once as long as nobody writes to it. */
export function remembering(
  world: World,
  stateOf: (file: string) => string | undefined = stateOnDisk,
): World {
  const reader = <T>(read: (path: string) => Promise<T>) => {
    const known = new Map<string, { readonly state: string; readonly value: T }>();
    return async (path: string): Promise<T> => {
      // Looked at before it is read: of what is written meanwhile the next look will tell.
      const state = stateOf(path);
      const before = known.get(path);
      if (before && before.state === state) return before.value;
      const value = await read(path);
      if (state === undefined) known.delete(path);
      else known.set(path, { state, value });
      return value;
    };
  };
  return { list: world.list, readText: reader(world.readText), readBytes: reader(world.readBytes) };
}
