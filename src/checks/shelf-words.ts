import type { MessageValues } from "../model/message-table.ts";
import type { WordedMessage } from "./worded-message.ts";

type ShelfCode = Extract<keyof MessageValues, `shelf-${string}`>;

/** What is said of shelves. */
export const shelfWords: { readonly [C in ShelfCode]: (v: MessageValues[C]) => WordedMessage } = {
  "shelf-rig-left-out": (v) => ({
    reason: `packs of "${v.rig}" get labels, but the guide leaves the rig out: it has no card and no page`,
    hint: `add ${v.rig} to \`rigs\` under \`library:\` in guide.yaml, or take the pack out`,
  }),
  "shelf-shot-unused": (v) => ({
    reason: `${v.size} of ${v.metal} lies unused: the packs take ${v.size} of ${v.wanted.join(" and ")}, which is ordered`,
    hint:
      v.metal === "lead"
        ? `write ${v.wanted.join(" or ")} if it is that; lead may be sold and used only as the law of your place says`
        : `write ${v.wanted.join(" or ")} if it is that; which metal a rig takes, its tub says`,
  }),
};
