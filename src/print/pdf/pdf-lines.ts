import type { Face } from "../../drawing/model.ts";
import type { SetLine } from "./pdf-content.ts";
import type { PdfFont } from "./pdf-font.ts";

/** The faces as a document embeds them. */
type EmbeddedFonts = Readonly<Record<Face, PdfFont>>;

/** Lines of text in the codes that a document's faces have for their glyphs. Source: ISO 32000-1, section 9.4.3. */
export class CodedLines {
  /** What shows the lines met, by face and text. */
  private readonly known = new Map<string, string>();

  constructor(private readonly embedded: EmbeddedFonts) {}

  /** A line's glyphs with its kerning. */
  shown({ face, text, ids, signs, kerns }: SetLine): string {
    const key = `${face} ${text}`;
    let shown = this.known.get(key);
    if (shown === undefined) {
      const font = this.embedded[face];
      let open = "<";
      for (const [i, id] of ids.entries()) {
        open += font.codeOf({ id, text: signs[i] ?? "" });
        const kern = kerns[i];
        if (kern && i < ids.length - 1) open += `>${kern}<`;
      }
      shown = `[${open}>]`;
      this.known.set(key, shown);
    }
    return shown;
  }
}
