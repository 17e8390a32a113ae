import type { SolvedDepth } from "../../src/model/solved.ts";
import type { Voice } from "./view.ts";

/** Finding this depth with a plummet, try by try. */
export function PlumbingPart({ voice: { say, figures }, depth }: { voice: Voice; depth: SolvedDepth }) {
  const { steps, plummetNeededG, plummet } = depth.plumbing;
  if (steps.length === 0) return null;
  return (
    <details class="more">
      <summary>{say("plumbing.title")}</summary>
      <p>
        {plummet
          ? say("plumbing.plummet", {
              mass: figures.mass(plummet.massG),
              metal: say(`metal.${plummet.metal}`),
            })
          : say("plumbing.no-plummet", { mass: figures.mass(plummetNeededG) })}
      </p>
      <table>
        <caption>{say("plumbing.caption")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("plumbing.set")}</th>
            <th scope="col">{say("rig.float-does")}</th>
            <th scope="col">{say("plumbing.then")}</th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ settingMm, sign, moveMm }) => (
            <tr>
              <th scope="row">{figures.shortDepth(settingMm)}</th>
              <td>{say(`plumbing.${sign.replaceAll(" ", "-")}`)}</td>
              <td>
                {moveMm === 0
                  ? say("plumbing.done")
                  : say(moveMm > 0 ? "plumbing.deeper" : "plumbing.shallower", {
                      gap: figures.shortGap(Math.abs(moveMm)),
                    })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
