import { pageWords } from "../../templates/pages/page-words.ts";
import { withId } from "../core/lists.ts";
import type { ShotScale } from "../core/tackle/shot.ts";
import type { CardNotes } from "../model/card-content.ts";
import type { GuideData } from "../model/guide-data.ts";
import type { Rig } from "../model/rig.ts";
import { makeWords } from "../words/words.ts";

/** Set by the data scripts, which stand before this one. */
declare const dotdownGuide: GuideData;
declare const dotdownRig: Rig;
declare const dotdownCardNotes: CardNotes;

export const { guide } = dotdownGuide;
export const words = makeWords(dotdownGuide.words, dotdownGuide.guide.language);
export const say = pageWords(words);

/** The rig whose data script was loaded last. A count that JSON cannot hold came as null. */
export const loadedRig = (): Rig => ({
  ...dotdownRig,
  tub: dotdownRig.tub.map((shot) => ({ ...shot, count: shot.count ?? Number.POSITIVE_INFINITY })),
});

/** What its card says besides its sums. */
export const loadedNotes = (): CardNotes => dotdownCardNotes;

export const scaleOf = ({ scaleId }: Pick<Rig, "scaleId">): ShotScale => withId(dotdownGuide.scales, scaleId);
