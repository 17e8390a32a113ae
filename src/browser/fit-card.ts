import { first } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { drawingToSvg } from "../drawing/svg.ts";
import type { CardNotes } from "../model/card-content.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { MakeCard } from "./card.ts";
import { guide, say, words } from "./fit-data.ts";
import { loadScript } from "./load-script.ts";
import { dataOf, partById } from "./page-parts.ts";
import { toDom } from "./to-dom.ts";

/** Set by `card.js`, which is loaded when the first card is asked for. */
declare const dotdownCard: MakeCard | undefined;

/** What a card is made of. */
interface Carded {
  readonly solved: SolvedRig;
  readonly kit: DrawingKit;
  readonly notes: CardNotes;
}

type Card = Awaited<ReturnType<MakeCard>>;

const buttons = partById("fit-buttons");
const show = partById<HTMLButtonElement>("fit-card");
const save = partById<HTMLButtonElement>("fit-card-save");
const status = partById("fit-card-status");
const shown = partById("fit-card-shown");

let asked: Carded | undefined;
let card: Card | undefined;

/** The rig whose card may be had; nothing where there is none. A card that was shown of another is gone. */
export function offerCard(rig: Carded | undefined): void {
  withdrawCard();
  asked = rig;
  show.disabled = rig === undefined;
  buttons.hidden = rig === undefined;
}

/** No card may be had until one is offered again; what offers it keeps its room. */
export function withdrawCard(): void {
  asked = undefined;
  card = undefined;
  show.disabled = true;
  save.hidden = true;
  status.textContent = "";
  shown.replaceChildren();
}

async function showCard(): Promise<void> {
  const of = asked;
  if (!of) return;
  status.textContent = say("fit.card-working");
  try {
    if (typeof dotdownCard === "undefined") await loadScript(dataOf(show, "script"));
  } catch {
    status.textContent = say("fit.card-not-here");
    return;
  }
  try {
    const made = await dotdownCard!(of.solved, guide, of.kit, of.notes);
    // Meanwhile another water may have been asked for.
    if (asked !== of) return;
    card = made;
    const rig = of.solved.rig.title;
    shown.replaceChildren(
      ...(["front", "back"] as const).flatMap((side) => {
        const title = say(`fit.card-${side}`, { rig });
        const svg = drawingToSvg(
          { ...made[side], title, description: "" },
          { idPrefix: `card-${side}`, theme: "print" },
        );
        return toDom({ type: "raw-html", key: null, props: { html: svg } });
      }),
    );
    save.hidden = false;
    status.textContent = [say("fit.card-shown"), ...lacking(made.lacks)].join(" ");
    shown.scrollIntoView({ block: "nearest" });
  } catch (error) {
    tellFailure(error);
  }
}

/** What the card had no room for, so that nobody takes it for all there is to know. */
function lacking(parts: Card["lacks"]): string[] {
  const named = parts.map((part) => words(`card.part.${part}`)).join(", ");
  return named ? [say("fit.card-lacks", { parts: named })] : [];
}

async function saveCard(): Promise<void> {
  if (!card || !asked) return;
  const { solved } = asked;
  try {
    const pdf = await card.pdf();
    const address = URL.createObjectURL(new Blob([pdf as BlobPart], { type: "application/pdf" }));
    const link = document.createElement("a");
    link.href = address;
    link.download = `${solved.rig.id}-${Math.round(first(solved.depths).depthMm / 10)}.pdf`;
    link.click();
    URL.revokeObjectURL(address);
    status.textContent = say("fit.card-done");
  } catch (error) {
    tellFailure(error);
  }
}

function tellFailure(error: unknown): void {
  const reason = error instanceof Error && error.name === "DoesNotFitError" ? error.message : "";
  status.textContent = `${say("fit.card-failed")} ${reason}`.trim();
}

show.addEventListener("click", showCard);
save.addEventListener("click", saveCard);
