import type { CardCode } from "../../../templates/cards/card-back.tsx";
import { CardBack, SaidAlone } from "../../../templates/cards/card-back.tsx";
import { CardFront } from "../../../templates/cards/card-front.tsx";
import type { BackLook, FrontLook } from "../../../templates/cards/card-look.ts";
import { placedLogo } from "../../../templates/logo.ts";
import { last } from "../../core/lists.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import { describeRig } from "../../drawing/rig/rig-drawing.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import type { CardChoice, CardContent, CardDepth, CardPart } from "../../model/card-content.ts";
import type { RasterImage } from "../../model/own-image.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { drawnOf, threeDepths } from "./card-content.ts";
import type { CardFormat } from "./card-formats.ts";
import { gaugePicture, tipPicture } from "./card-pictures.ts";
import { qrCode } from "./qr-code.ts";
import { rigPicture } from "./rig-picture.ts";
import { shotTable } from "./shot-table.ts";

/** Lays out the two sides of one rig's card in one format. */
export interface Composer {
  readonly card: CardContent;
  readonly front: (look: FrontLook, parts: Parts, lack?: "measured" | "noticed") => LaidOutPage;
  readonly back: (look: BackLook, parts: Parts, tackle: boolean) => LaidOutPage;
  /** What a further part takes of the back's height, at the least [mm]: where that is not free it need not be tried. */
  readonly takes: (look: BackLook, part: CardPart, taken: Parts, tackle: boolean) => number;
}

export type Parts = readonly CardPart[];

/** How the sides of a rig's card are laid out in a format. */
export function makeComposer(
  solved: SolvedRig,
  format: CardFormat,
  card: CardContent,
  kit: DrawingKit,
  fonts: Fonts,
  logo: RasterImage | undefined,
): Composer {
  const drawn = drawnOf(solved.depths);
  const code = codeOf(card, format, kit);
  const mark = logo && format.logoMm && placedLogo(logo, format.logoMm);
  const saidMm = heightOfSaid(card, format, fonts);
  const alt = describeRig(solved, drawn, kit);
  const tableOnce = onceALook<ReturnType<typeof shotTable>>();
  const frontOnce = onceALook<LaidOutPage>();
  const backOnce = onceALook<LaidOutPage>();
  return {
    card,
    takes: (look, part, taken, tackle) => {
      if (saidParts.has(part)) return saidMm(look, [...taken, part], tackle) - saidMm(look, taken, tackle);
      const written = taken.includes("write-in") ? look.writeInMm : 0;
      if (part === "code" && code) return code.sizeMm - written;
      if (part === "gauge") return gaugePicture(solved, format, look, kit).heightMm;
      return 0;
    },
    front: (look, parts, lack = "noticed") =>
      frontOnce(look, `${lack} ${parts.join()}`, () => {
        const picture = rigPicture(solved, drawn, kit, look.figurePt * mmPerPoint, look.shared, lack);
        const { heightMm } = format.front;
        const scale = kit.figures.ruler;
        const front = { card, look, heightMm, scale, picture: { alt, draw: picture.draw } };
        const tip = parts.includes("true-tip") ? { tip: tipPicture(solved, kit, look) } : {};
        const setDepth = parts.includes("set-depth");
        return picture.checked(layOut(CardFront({ ...front, ...tip, setDepth }), format.front, fonts));
      }),
    back: (look, parts, tackle) =>
      backOnce(look, `${tackle} ${parts.join()}`, () => {
        const choice = choiceOf(card, parts);
        const { depths } = choice;
        const table = tableOnce(look, depths.map(({ depthMm }) => depthMm).join(), () =>
          shotTable(card, depths, look, format.back.widthMm, kit),
        );
        const gauge = choice.parts.has("gauge") ? gaugePicture(solved, format, look, kit) : undefined;
        const props = { card, choice, words: kit.words, look, table, tackle, code, gauge, mark };
        return layOut(CardBack(props), format.back, fonts);
      }),
  };
}

/** Parts that are sentences below the table. */
const saidParts: ReadonlySet<CardPart> = new Set([
  "set-depth",
  "made-up",
  "ruler",
  "depth-between",
  "tip-says",
  "feed",
  "record-depth",
  "signs",
]);

/** Height of what a back says below its table with some parts [mm], each laid out once. */
function heightOfSaid(card: CardContent, { back }: CardFormat, fonts: Fonts) {
  const once = onceALook<number>();
  return (look: BackLook, taken: Parts, tackle: boolean): number =>
    once(look, `${tackle} ${taken.join()}`, () => {
      const tree = SaidAlone({ card, choice: { parts: new Set(taken) }, look, tackle });
      return layOut(tree, { widthMm: back.widthMm - 2 * look.marginMm }, fonts).heightMm;
    });
}

/** What is made of a card, once for each look and what else it depends on: looks are tried again and again with other parts. */
function onceALook<T>() {
  const known = new Map<object, Map<string, T>>();
  return (look: FrontLook | BackLook, key: string, make: () => T): T => {
    const ofLook = known.get(look) ?? new Map<string, T>();
    known.set(look, ofLook);
    const value = ofLook.get(key) ?? make();
    ofLook.set(key, value);
    return value;
  };
}

/** What stands on a card that has taken these parts. */
function choiceOf({ depths, drawn }: CardContent, taken: readonly CardPart[]): CardChoice {
  const parts = new Set(taken);
  return { depths: depthsTold(depths, drawn, parts), parts };
}

function depthsTold(
  depths: readonly CardDepth[],
  drawn: CardDepth,
  parts: ReadonlySet<CardPart>,
): readonly CardDepth[] {
  if (parts.has("every-depth")) return depths;
  if (parts.has("three-depths")) return threeDepths(depths);
  if (!parts.has("two-depths")) return [drawn];
  return depths.length < 3 ? depths : [drawn, last(threeDepths(depths))];
}

function codeOf(card: CardContent, { moduleMinMm }: CardFormat, { words }: DrawingKit): CardCode | undefined {
  if (card.address === undefined) return undefined;
  const code = qrCode(card.address);
  return {
    alt: words("card.code-alt", { address: card.address }),
    address: card.address.replace(/^https?:\/\//, ""),
    sizeMm: code.modules * moduleMinMm,
    draw: code.draw,
  };
}

/** Whether there is anything to say of it; a whip has no other depth, a guide without an address no code. */
export function hasPart(card: CardContent, part: CardPart): boolean {
  switch (part) {
    case "other-depth":
      return card.otherDepth !== undefined;
    case "depth-between":
      return card.depthBetween !== undefined;
    case "change-first":
      return card.changeFirst !== undefined;
    case "float-says":
      return card.floatSays.length > 0;
    case "findings":
      return card.findings.length > 0;
    case "made-up":
      return card.madeUp.length > 0;
    case "two-depths":
      return card.depths.length > 1;
    case "three-depths":
      return card.depths.length > 2;
    case "every-depth":
      return card.depths.length > 3;
    case "code":
      return card.address !== undefined;
    case "find-us":
      return card.findUs !== undefined;
    case "gauge":
      return card.shotSizes > 1;
    default:
      return true;
  }
}
