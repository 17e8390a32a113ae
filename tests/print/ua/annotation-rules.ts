import { PDFName } from "@cantoo/pdf-lib";
import { elementsOf, type UaRule } from "./rule.ts";

/** Links, the only annotations there are; and no forms. */
export const annotationRules: readonly UaRule[] = [
  {
    id: "7.18.1-1, 7.18.2-1, 7.18.4-1, 7.18.6.2-1, 7.18.8-1",
    says: "annotations are links: no traps, fields, clips or printer's marks, nor others that would need an Annot",
    broken: (pdf) => [
      ...annotations(pdf)
        .filter(({ subtype }) => subtype !== "Link")
        .map(({ ref }) => ref),
      ...(pdf.catalog.has(PDFName.of("AcroForm")) ? ["AcroForm"] : []),
    ],
  },
  {
    id: "7.18.1-2, 7.18.5-2",
    says: "an annotation tells in words what it is",
    broken: (pdf) =>
      annotations(pdf)
        .filter(({ contents }) => !contents)
        .map(({ ref }) => ref),
  },
  {
    id: "7.18.3-1",
    says: "tabs follow the structure, on pages without annotations too",
    broken: (pdf) => pdf.pages.filter(({ tabs }) => tabs !== "S").map(({ ref }) => ref),
  },
  {
    id: "7.18.5-1",
    says: "a link belongs to a Link element, and the element knows it",
    broken: (pdf) => {
      const elements = new Map(elementsOf(pdf).map((element) => [element.ref, element]));
      return annotations(pdf)
        .filter(({ ref, page, structParent }) => {
          const element = elements.get(pdf.objectOwners.get(structParent ?? -1) ?? "");
          const known = element?.objects.some((object) => object.ref === ref && object.page === page);
          return element?.type !== "Link" || !known;
        })
        .map(({ ref }) => ref);
    },
  },
];

function annotations(pdf: Parameters<UaRule["broken"]>[0]) {
  return pdf.pages.flatMap((page) => page.annotations.map((one) => ({ ...one, page: page.ref })));
}
