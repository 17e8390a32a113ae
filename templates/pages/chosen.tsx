import type { Say } from "./page-words.ts";

/** Rigs for a water, as they are told. */
export interface Chosen {
  readonly title: string;
  readonly asked: string;
  readonly hazards: readonly string[];
  readonly offered: readonly {
    readonly title: string;
    readonly address: string;
    readonly points: number;
    readonly why: string;
    readonly set: string;
  }[];
  readonly ruledOut: readonly { readonly title: string; readonly why: string }[];
}

/** What the page to choose rigs by answers: what can hurt there first, then the rigs, the best first, then the others. */
export function ChosenRigs({ say, chosen }: { readonly say: Say; readonly chosen: Chosen }) {
  const { title, asked, hazards, offered, ruledOut } = chosen;
  return (
    <>
      <h2>{title}</h2>
      {hazards.length > 0 && (
        <>
          <h3>{say("choose.hazards")}</h3>
          <ul>
            {hazards.map((line) => (
              <li>{line}</li>
            ))}
          </ul>
        </>
      )}
      <p>{asked}</p>
      <h3>{say("choose.suit")}</h3>
      {offered.length === 0 && <p>{say("choose.none")}</p>}
      <ol>
        {offered.map((rig) => (
          <li>
            <a href={rig.address}>{rig.title}</a>
            <p>{say("choose.points", { points: rig.points, why: rig.why })}</p>
            <p>{say("choose.set", { length: rig.set })}</p>
          </li>
        ))}
      </ol>
      {ruledOut.length > 0 && <h3>{say("choose.out")}</h3>}
      <dl>
        {ruledOut.map((rig) => (
          <>
            <dt>{rig.title}</dt>
            <dd>{rig.why}</dd>
          </>
        ))}
      </dl>
    </>
  );
}
