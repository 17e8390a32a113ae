import { checkKnot, knotFaultWords } from "../drawing/knots/check.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import { type Message, message } from "../model/message.ts";
import type { Words } from "../words/words.ts";

/** What is wrong with the step pictures of the guide's own knots, each error at its step. */
export function knotMessages(
  { knots, lent }: Pick<Library, "knots" | "lent">,
  words: Words,
  keep: Keep = makeAnew,
): Message[] {
  const own = knots.filter(({ id }) => !lent.has(`knots/${id}`));
  return own.flatMap((knot) =>
    keep("knot", JSON.stringify([knot.frame, knot.steps]), () => checkKnot(knot)).map((fault) =>
      message(`knot-${fault.kind}`, knot.placeOf(["steps", fault.step - 1]), {
        reason: knotFaultWords(fault, words),
      }),
    ),
  );
}
