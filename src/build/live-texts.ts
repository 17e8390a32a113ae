import type { List, Root } from "mdast";
import { allTexts } from "../checks/texts.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { PictureSource } from "../drawing/pictures.ts";
import type { Library } from "../model/library.ts";
import { type Message, message, type Staged } from "../model/message.ts";
import { withLiveFigures } from "../words/live/live-figures.ts";
import { planHead } from "../words/plan-head.ts";

/**
 * Texts of the library → the same with live figures. References to what is not there are errors; a lent text goes
 * without what it says there.
 */
export function liveTexts(
  library: Library,
  source: Pick<PictureSource, "library" | "solved">,
  kit: DrawingKit,
): Staged<ReadonlyMap<Root, Root>> {
  const { words, figures } = kit;
  const lent = new Set(library.lent.values());
  const live = allTexts(library).map((text) => {
    const isLent = lent.has(text.path);
    const made = withLiveFigures(text, { ...source, words, figures }, isLent ? "goes" : "stays");
    return { body: text.body, isLent, ...made };
  });
  const heads = new Map(library.plans.map((plan) => [plan.body, planHead(plan, library.lessons, kit)]));
  return {
    value: new Map(live.map(({ body, value }) => [body, withHead(heads.get(body), value)])),
    messages: [
      ...live.flatMap(({ isLent, messages }) => (isLent ? [] : messages)),
      ...toldOfLent(live.flatMap(({ isLent, messages }) => (isLent ? messages : []))),
    ],
  };
}

/** What lent texts go without: rules of the place in one, as they are said in one place; all else where it stands. */
function toldOfLent(messages: readonly Message[]): readonly Message[] {
  const wrong = messages.filter(({ severity }) => severity === "error");
  const ruleIn = ({ code, values }: Message) =>
    code === "unknown-name" && values.what === "rule of the guide" ? values.found : undefined;
  const rules = [...new Set(wrong.flatMap((one) => ruleIn(one) ?? []))];
  const at = wrong.find((one) => ruleIn(one) !== undefined);
  return [
    ...(at ? [message("lent-without-rules", at.place, { rules })] : []),
    ...wrong
      .filter((one) => ruleIn(one) === undefined)
      .map((of) => message("lent-shortened", of.place, { of })),
  ];
}

function withHead(head: List | undefined, body: Root): Root {
  return head ? { ...body, children: [head, ...body.children] } : body;
}
