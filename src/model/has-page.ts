import type { sitePaths } from "./addresses.ts";
import type { Library } from "./library.ts";

/** Pages that only a guide has of which there is something to show. */
const pagesOfSome: Readonly<Partial<Record<keyof typeof sitePaths, (library: Library) => boolean>>> = {
  plans: ({ plans }) => plans.length > 0,
  swims: ({ swims }) => swims.length > 0,
  soundings: ({ swims }) => swims.length > 0,
  choose: ({ choosing, rigs }) => choosing !== undefined && rigs.length > 0,
  sessions: ({ sessions }) => sessions.some(({ isPublic }) => isPublic),
  glossary: ({ glossary }) => glossary.length > 0,
  troubles: ({ troubles }) => troubles.length > 0,
  fish: ({ species }) => species.length > 0,
  safety: ({ pages }) => pages.some(({ id }) => id === "safety"),
};

/** Whether a guide has a page whose address is the same in every guide. */
export function hasPage(library: Library, name: keyof typeof sitePaths): boolean {
  return pagesOfSome[name]?.(library) ?? true;
}
