import { elementsOf, pieces, type UaRule } from "./rule.ts";

/** What is painted: every mark is tagged or an artifact. */
export const contentRules: readonly UaRule[] = [
  {
    id: "7.1-1",
    says: "no artifact stands inside tagged content",
    broken: (pdf) =>
      pieces(pdf)
        .filter(({ piece }) => piece.around.findIndex(({ tag }) => tag === "Artifact") > 0)
        .map(({ piece }) => piece.operator),
  },
  {
    id: "7.1-2",
    says: "no tagged content stands inside an artifact",
    broken: (pdf) =>
      pieces(pdf)
        .filter(({ piece: { around } }) => around[0]?.tag === "Artifact" && around.length > 1)
        .map(({ piece }) => piece.operator),
  },
  {
    id: "7.1-3",
    says: "all that is painted is an artifact or belongs to an element, and the element knows it",
    broken: (pdf) => {
      const claimed = new Map(
        elementsOf(pdf).flatMap((e) =>
          e.content.map(({ page, mcid }) => [`${page} ${mcid}`, e.ref] as const),
        ),
      );
      return pieces(pdf)
        .filter(({ page, piece: { around } }) => {
          if (around[0]?.tag === "Artifact") return false;
          const mcid = around[0]?.mcid;
          if (mcid === undefined) return true;
          const owner = claimed.get(`${page.ref} ${mcid}`);
          return owner === undefined || pdf.owners.get(page.structParents ?? -1)?.[mcid] !== owner;
        })
        .map(({ page, piece }) => `${piece.operator} on ${page.ref}`);
    },
  },
  {
    id: "7.20-1, 7.20-2",
    says: "there are no XObjects",
    broken: (pdf) => pdf.pages.filter((page) => page.xObjects > 0).map((page) => page.ref),
  },
];
