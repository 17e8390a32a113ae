import type { List, Root } from "mdast";
import { allTexts } from "../checks/texts.ts";
import type { PictureSource } from "../drawing/pictures.ts";
import { digestOf } from "../model/digest.ts";
import type { Library } from "../model/library.ts";
import { type Message, message, type Staged, startOf } from "../model/message.ts";
import { withLiveFigures } from "../words/live/live-figures.ts";
import type { LiveLibrary } from "../words/live/references.ts";
import { planHead } from "../words/plan-head.ts";
import type { TableKit } from "../words/table-kit.ts";
import { type Asked, noting } from "./noting.ts";

/**
 * Texts of the library → the same with live figures. References to what is not there are errors; a lent text goes
 * without what it says there. Where neither a text nor anything that it takes figures from has changed since the guide was read
 * last in this process, it is the same again.
 */
export function liveTexts(
  library: Library,
  source: Pick<PictureSource, "library" | "solved">,
  { words }: TableKit,
): Staged<ReadonlyMap<Root, Root>> {
  const lent = new Set(library.lent.values());
  const plans = new Map(library.plans.map((plan) => [plan.body, plan]));
  const around = aroundTexts(library, source.library);
  const { kit, rigs, noted, stands } = noting(library, words, source.solved);
  const context = { library: source.library, solved: rigs, ...kit };
  const live = allTexts(library).map((text) => {
    const { path, body } = text;
    const isLent = lent.has(path);
    const before = known.get(body);
    if (before && before.from === around && before.path === path && stands(before.asked))
      return { body, isLent, ...before.live };
    const { made, asked } = noted(() => {
      const { value, messages } = withLiveFigures(text, context, isLent ? "goes" : "stays");
      const plan = plans.get(body);
      return { value: plan ? withHead(planHead(plan, library.lessons, kit), value) : value, messages };
    });
    // What there is to tell names what else there might be.
    if (made.messages.length === 0) known.set(body, { from: around, asked, path, live: made });
    return { body, isLent, ...made };
  });
  return {
    value: new Map(live.map(({ body, value }) => [body, value])),
    messages: [
      ...live.flatMap(({ isLent, messages }) => (isLent ? [] : messages)),
      ...toldOfLent(
        live.flatMap(({ isLent, messages }) => (isLent ? messages : [])),
        library.guideFile,
      ),
    ],
  };
}

/** Texts with their figures, as they were last, and what these were taken from. */
const known = new WeakMap<
  Root,
  { readonly from: string; readonly asked: Asked; readonly path: string; readonly live: Staged<Root> }
>();

/** All that texts take figures from, and plans their heads, besides rigs and words. How figures are written follows from words and guide. */
function aroundTexts({ lessons }: Library, library: Library): string {
  return digestOf(
    lessons.map(({ id, title }) => [id, title]),
    wordless(library),
  );
}

/** What live figures may ask of a guide, without the texts in it. */
function wordless({ lent, images, ...library }: Library): object {
  const { guide, scales, kits, lines } = library;
  const ids = (entries: readonly { readonly id: string }[]) => entries.map(({ id }) => id);
  return {
    guide,
    lent: [...lent],
    scales,
    kits,
    lines,
    floats: library.floats.map(({ body: _, ...float }) => float),
    baits: library.baits.map(({ notes: _, ...bait }) => bait),
    species: library.species.map(({ notes: _, ...fish }) => fish),
    plans: library.plans.map(({ body: _, ...plan }) => plan),
    rigs: ids(library.rigs),
    pages: ids(library.pages),
    knots: ids(library.knots),
    images: [...images.keys()],
  } satisfies { readonly [Key in keyof LiveLibrary]-?: unknown };
}

/** What lent texts go without: rules of the place in one, where its author says them; all else where it stands. */
function toldOfLent(messages: readonly Message[], guideFile: string): readonly Message[] {
  const wrong = messages.filter(({ severity }) => severity === "error");
  const ruleIn = ({ code, values }: Message) =>
    code === "unknown-name" && values.what === "rule of the guide" ? values.found : undefined;
  const rules = [...new Set(wrong.flatMap((one) => ruleIn(one) ?? []))];
  return [
    ...(rules.length > 0 ? [message("lent-without-rules", startOf(guideFile), { rules })] : []),
    ...wrong
      .filter((one) => ruleIn(one) === undefined)
      .map((of) => message("lent-shortened", of.place, { of })),
  ];
}

const withHead = (head: List, body: Root): Root => ({ ...body, children: [head, ...body.children] });
