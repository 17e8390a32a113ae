import type { Say } from "./page-words.ts";

/** Parts that a page's script shows where the rig has them. */
export const tryParts = ["settling", "depth", "current", "sinking", "bites", "cast"] as const;

interface TryPartsProps {
  readonly say: Say;
  /** Whether they stand below a heading of a page. */
  readonly within?: boolean;
}

/** Where a page's script puts the films of a rig, and says why there are none. */
export function TryParts({ say, within = false }: TryPartsProps) {
  const Heading = within ? "h3" : "h2";
  return (
    <>
      <p id="try-said" role="status" />
      {tryParts.map((part) => (
        <section id={`try-${part}`} aria-labelledby={`try-${part}-title`} hidden>
          <Heading id={`try-${part}-title`}>{say(`try.${part}.title`)}</Heading>
          <p>{say(`try.${part}.how`)}</p>
          {part === "current" && <Jumps say={say} />}
          {part === "sinking" && <Ways say={say} />}
          <div class="try-shown" />
        </section>
      ))}
    </>
  );
}

/** Places on the slider of the float that is held back, by its steps. */
const jumps = [
  ["free", 0],
  ["half", 10],
  ["stopped", 20],
] as const;

function Jumps({ say }: { readonly say: Say }) {
  return (
    <p class="film-buttons">
      {jumps.map(([name, step]) => (
        <button type="button" data-step={String(step)}>
          {say(`try.current.${name}`)}
        </button>
      ))}
    </p>
  );
}

/** How the shot of either side hang and how it lands; the script says what there is to choose from. */
function Ways({ say }: { readonly say: Say }) {
  return (
    <div class="try-ways">
      {(["left", "right"] as const).map((side) => (
        <fieldset>
          <legend>{say(`try.sinking.${side}`)}</legend>
          <select name="arrangement" aria-label={say("try.sinking.hung")} />
          <select name="landing" aria-label={say("try.sinking.landing")} />
        </fieldset>
      ))}
    </div>
  );
}
