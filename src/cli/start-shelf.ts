import type { StartValues } from "../content/start/commented.ts";
import type { BegunGuide } from "./begun-guide.ts";

/** What a new shelf says of the first rig of a guide: a pack of it, and what it is made of; the usual where there is none. */
export function shelfStart({ rigs }: BegunGuide): StartValues {
  const [rig] = rigs;
  if (rig === undefined) return {};
  const { float, hook } = rig.front;
  return {
    packs: `\n  - { rig: ${rig.id}, wanted: 5 }`,
    ...(float !== undefined && { floats: `\n  - { float: ${float}, count: 5, packet: 1 }` }),
    ...(hook !== undefined && { hooks: `\n  - { size: ${hook}, count: 20, packet: 10 }` }),
  };
}
