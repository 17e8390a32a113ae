import { metalIn } from "../../src/core/tackle/box-notation.ts";
import { metals, type ShotScale, type Tub } from "../../src/core/tackle/shot.ts";
import { Options } from "./fields.tsx";
import { ShotDisc } from "./shot-disc.tsx";
import type { View } from "./view.ts";

interface ShotBoxProps {
  readonly view: View;
  readonly scaleId: string;
  /** The guide's own shot: what is ticked where nobody has said anything. */
  readonly tub: Tub;
  /** Whether counts and metals are asked for too. */
  readonly full: boolean;
}

/** The guide's own shot to tick, where it has a tub. */
export function GuideShotBox({ view }: { readonly view: View }) {
  const { scaleId, tubId } = view.library.guide;
  const tub = view.library.tubs.find(({ id }) => id === tubId)?.tub;
  return tub ? <ShotBox view={view} scaleId={scaleId} tub={tub} full={false} /> : null;
}

/** The sizes of a scale to tick; the page's script asks how many only of those that a rig takes. */
export function ShotBox({ view: { say, library }, scaleId, tub, full }: ShotBoxProps) {
  const sizes: ShotScale["sizes"] = library.scales.find(({ id }) => id === scaleId)?.sizes ?? [];
  const usual = metalIn(tub);
  return (
    <details class="box needs-script" data-takes={say("box.takes", { count: "{count}" })}>
      <summary>{say("box.title")}</summary>
      <p>{full ? say("box.lead") : say("box.lead-short")}</p>
      <ul class={full ? "shot-box" : "shot-box ticks"}>
        {sizes.map(({ name, massG }) => (
          <li data-size={name} data-metal={usual(name)}>
            <label>
              <input type="checkbox" checked={tub.some(({ size }) => size === name)} />{" "}
              {name.replaceAll(" ", "\u00a0")} <ShotDisc massG={massG} metal={usual(name)} />
            </label>
            {full && (
              <>
                <input
                  class="count"
                  inputmode="numeric"
                  autocomplete="off"
                  aria-label={say("box.count-of", { size: name })}
                  hidden
                />
                <select aria-label={say("box.metal-of", { size: name })}>
                  <Options
                    chosen={usual(name)}
                    choices={metals.map((metal) => [metal, say(`metal.${metal}`)])}
                  />
                </select>
              </>
            )}
          </li>
        ))}
      </ul>
      <input name="box" aria-label={say("box.title")} hidden />
    </details>
  );
}
