import { ballDiameterMm } from "../../src/core/tackle/shot.ts";
import { sitePaths } from "../../src/model/addresses.ts";
import type { ScaleEntry } from "../../src/model/library.ts";
import { keyOf } from "../../src/words/words.ts";
import { PageHead } from "./page-head.tsx";
import { ShotDisc } from "./shot-disc.tsx";
import { hasSafety, type View } from "./view.ts";

/** Scales that differ by less than this share say the same for fishing; common practice, no source. */
const agreeingShare = 0.05;

/** Shot sizes: the guide's own scale, the scales side by side, and what the shot are made of. */
export function ShotPage({ view }: { view: View }) {
  const { say, library, href } = view;
  return (
    <>
      <PageHead title={say("shot.title")} lead={say("shot.lead")} />
      <section aria-labelledby="side-by-side">
        <h2 id="side-by-side">{say("shot.side-by-side")}</h2>
        <p>{say("shot.side-by-side-lead")}</p>
        <ScaleTable view={view} />
      </section>
      {library.scales.map((scale) => (
        <section aria-labelledby={scale.id}>
          <h2 id={scale.id}>{scale.title}</h2>
          {scale.id === library.guide.scaleId && (
            <p>
              <strong>{say("shot.in-use")}</strong>
            </p>
          )}
          <p>{scale.source}</p>
          <p>{say("shot.basis", { basis: say(`basis.${keyOf(scale.basis)}`) })}</p>
        </section>
      ))}
      <section aria-labelledby="metals">
        <h2 id="metals">{say("shot.metals")}</h2>
        <p>{say("shot.metals-lead")}</p>
        <p>{say("shot.across-how")}</p>
        <TubTable view={view} />
        {hasSafety(view) && (
          <p>
            <a href={href(sitePaths.safety)}>{say("lead.more")}</a>
          </p>
        )}
      </section>
    </>
  );
}

function ScaleTable({ view: { say, figures, library } }: { view: View }) {
  const names = [...new Set(library.scales.flatMap(({ sizes }) => sizes.map(({ name }) => name)))];
  const rows = names
    .map((name) => ({ name, masses: library.scales.map((scale) => massIn(scale, name)) }))
    .sort((a, b) => heaviest(b.masses) - heaviest(a.masses));
  return (
    <section class="scroll" aria-label={say("shot.caption")} tabindex="0">
      <table>
        <caption>{say("shot.caption")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("table.size")}</th>
            {library.scales.map(({ title }) => (
              <th scope="col">{title}</th>
            ))}
            <th scope="col">{say("shot.agree")}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, masses }) => (
            <tr>
              <th scope="row">{name}</th>
              {masses.map((mass) => (
                <td>{mass === undefined ? say("table.blank") : figures.statedMass(mass)}</td>
              ))}
              <td>{differ(masses, figures) ? say("shot.disagree") : ""}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function massIn(scale: ScaleEntry, name: string): number | undefined {
  return scale.sizes.find((size) => size.name === name)?.massG;
}

function heaviest(masses: readonly (number | undefined)[]): number {
  return Math.max(...masses.map((mass) => mass ?? 0));
}

/** Whether the scales that know a size are further apart than matters, and are seen to be. */
function differ(masses: readonly (number | undefined)[], figures: View["figures"]): boolean {
  const known = masses.filter((mass) => mass !== undefined);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  return 1 - least / most > agreeingShare && figures.statedMass(least) !== figures.statedMass(most);
}

function TubTable({ view: { say, figures, library } }: { view: View }) {
  return library.tubs.map(({ id, title, tub }) => (
    <section class="scroll" aria-label={title} tabindex="0" id={`tub-${id}`}>
      <table>
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">{say("table.size")}</th>
            <th scope="col">{say("table.metal")}</th>
            <th scope="col">{say("shot.mass")}</th>
            <th scope="col">{say("shot.across")}</th>
          </tr>
        </thead>
        <tbody>
          {tub.map(({ size, metal, massG }) => (
            <tr>
              <th scope="row">{size}</th>
              <td>{say(`metal.${metal}`)}</td>
              <td>{figures.statedMass(massG)}</td>
              <td>
                <ShotDisc massG={massG} metal={metal} /> {figures.diameter(ballDiameterMm(massG, metal))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  ));
}
