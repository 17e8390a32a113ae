import { sitePaths } from "../model/addresses.ts";
import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";
import { pageLinks } from "./texts.ts";

/** Rigs that the notes on a fish lead to, though they do not say that they catch it. */
export const rigsForFish: ContentCheck = ({ library: { rigs, species } }) =>
  species.flatMap(({ title, also, path, notes }) => {
    const names = [title, ...also].map((name) => name.toLowerCase());
    const isFor = rigs.filter(({ catches }) => catches.some((fish) => names.includes(fish.toLowerCase())));
    const allowed = isFor.map(({ id }) => id);
    return pageLinks({ path, body: notes }).flatMap(({ page, place }) => {
      const rig = rigs.find(({ id }) => page === sitePaths.rig(id));
      if (!rig || isFor.includes(rig)) return [];
      return [message("rig-not-for-fish", place, { fish: title.toLowerCase(), rig: rig.title, allowed })];
    });
  });
