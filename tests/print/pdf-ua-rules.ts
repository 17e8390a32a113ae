import type { RawPdf } from "./raw-pdf.ts";
import { annotationRules } from "./ua/annotation-rules.ts";
import { contentRules } from "./ua/content-rules.ts";
import { documentRules } from "./ua/document-rules.ts";
import { fontRules } from "./ua/font-rules.ts";
import type { UaRule } from "./ua/rule.ts";
import { structureRules } from "./ua/structure-rules.ts";

/**
 * Source: ISO 14289-1:2014 as listed by the veraPDF consortium's validation profile for PDF/UA-1 (CC BY 4.0), one rule
 * a test number. Left out as there is nothing here that they speak of: form fields and annotations other than links (a
 * rule holds that there are none), optional content, encryption, media clips, XFA, XObjects,
 * formulas, notes, row groups, and fonts other than composite TrueType ones.
 */
export const uaRules: readonly UaRule[] = [
  ...documentRules,
  ...contentRules,
  ...structureRules,
  ...annotationRules,
  ...fontRules,
];

/** Every break of every rule, as `7.3-1: Figure 12 0 R`. */
export function uaBreaks(pdf: RawPdf): string[] {
  return uaRules.flatMap(({ id, broken }) => broken(pdf).map((what) => `${id}: ${what}`));
}
