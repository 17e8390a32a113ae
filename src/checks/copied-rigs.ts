import type { RigEntry } from "../model/library.ts";
import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";
import { liveAttributes } from "./texts.ts";

/** Rigs that were copied from others and still are called like them, or show the other's figures and none of their own. */
export const copiedRigs: ContentCheck = ({ library: { rigs, lent } }) => {
  const lentFiles = new Set(lent.values());
  const isLent = ({ path }: RigEntry) => lentFiles.has(path);
  // Whoever borrows cannot change what is lent, so the borrower's is the one that is called like it.
  const inTurn = [...rigs.filter(isLent), ...rigs.filter((rig) => !isLent(rig))];
  const firstOf = new Map<string, RigEntry>();
  for (const rig of inTurn) if (!firstOf.has(calledLike(rig))) firstOf.set(calledLike(rig), rig);
  return rigs.flatMap((rig) => {
    const { id, title, placeOf } = rig;
    const first = firstOf.get(calledLike(rig));
    const named =
      first === rig || !first
        ? []
        : [message("rig-title-taken", placeOf(["title"]), { title, by: first.path })];
    const shown = [...liveAttributes(rig, "rig")];
    const [another] = shown;
    const shows =
      another === undefined || shown.includes(id)
        ? []
        : [message("rig-shows-another", placeOf(["title"]), { title, another, id })];
    return [...named, ...shows];
  });
};

const calledLike = ({ title }: RigEntry) => title.trim().toLowerCase();
