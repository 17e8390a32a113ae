import type { SolvedDepth } from "../../src/model/solved.ts";
import type { Voice } from "./view.ts";

/** Finding this depth with a plummet, try by try. */
export function PlumbingPart({ voice: { say, rigTexts }, depth }: { voice: Voice; depth: SolvedDepth }) {
  const { plummet, tries } = rigTexts.plumbing(depth.plumbing);
  if (tries.length === 0) return null;
  return (
    <details class="more">
      <summary>{say("plumbing.title")}</summary>
      <p>{plummet}</p>
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
          {tries.map(({ set, says, next }) => (
            <tr>
              <th scope="row">{set}</th>
              <td>{says}</td>
              <td>{next}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
