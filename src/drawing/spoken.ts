import type { DrawingKit } from "./kit.ts";

/** Words for those who do not see a drawing: a size of shot as a voice should say it, `4 number 8` for `4 × No 8`. */
export function spoken(text: string, { words }: Pick<DrawingKit, "words">): string {
  return text
    .replace(/\bNo(?=[ \u00A0]\d)/g, words("drawing.spoken-number"))
    .replace(/(?<=\d)[ \u00A0]×(?=[ \u00A0])/g, "");
}
