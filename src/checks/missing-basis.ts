import type { Nodes } from "mdast";
import { bases } from "../core/basis.ts";
import { type Message, message } from "../model/message.ts";
import { type Block, blocksOf, hasNode, sectionsOf } from "./blocks.ts";
import { type ContentCheck, toldOnce } from "./check.ts";
import { pageTexts } from "./texts.ts";

const number =
  "(?:\\d+(?:\\.\\d+)?|half|a third|a quarter|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|sixty)";
const unit =
  "(?:mm|cm|m|km|g|kg|ml|l|s|lb|oz|ft|%|°C|(?:millimetre|centimetre|metre|gram|litre|second|minute|hour|pint)s?)";

/**
 * Figures that nobody computed for the rig at hand but that the trade goes by: a band (`5 cm to 30 cm`), a share
 * (`80 %`, `half to three quarters`) and a rate (`every 45 s`).
 */
const ruleOfThumb = new RegExp(
  [
    `\\b${number}(?:\\s${unit})?(?:\\sto\\s|–)${number}\\s${unit}(?![\\p{L}])`,
    `\\b${number}\\sor\\s${number}\\s${unit}(?![\\p{L}])`,
    "\\b(?:a third|half|two thirds) to (?:half|two thirds|three quarters|four fifths)\\b",
    "\\b\\d+(?:\\s?%|\\sin a hundred\\b)",
    `\\bevery\\s${number}\\s${unit}(?![\\p{L}])`,
  ].join("|"),
  "iu",
);

/** A basis by its name, which is for the ones that have no sign, and for the page that explains them. */
const basis = new RegExp(bases.join("|").replaceAll(" ", "\\s"), "i");

const sign = (node: Nodes) => node.type === "textDirective" && node.name === "basis";

/** A text leads outside: the figure has a source that can be looked up. */
const citation = (node: Nodes) => node.type === "link" && /^https?:/.test(node.url);

/**
 * Rules of thumb whose section says nothing of where they come from: no sign, no basis by its name, no link to a source. The
 * section is the measure since one sentence often speaks for the figures around it.
 */
export const missingBasis: ContentCheck = (checked) =>
  pageTexts(checked.library).flatMap(
    toldOnce(checked, "missing basis", [], ({ path, body }) =>
      sectionsOf(body).flatMap((section) => {
        const blocks = blocksOf(section, path);
        const said = hasNode(section, (node) => sign(node) || citation(node));
        if (said || blocks.some(({ text }) => basis.test(text))) return [];
        return blocks.flatMap(ruleIn).slice(0, 1);
      }),
    ),
  );

function ruleIn(block: Block): Message[] {
  const rule = ruleOfThumb.exec(block.text);
  if (!rule) return [];
  const values = { figure: rule[0].replace(/\s+/g, " ") };
  return [message("no-basis", block.placeAt(rule.index), values)];
}
