import { sitePaths } from "../../src/model/addresses.ts";
import type { Library } from "../../src/model/library.ts";
import type { LineForFish } from "../../src/model/line-table.ts";
import { keyOf } from "../../src/words/words.ts";
import { kindsCaught } from "./catches.ts";
import { pacedWay } from "./fields.tsx";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

/** A drawing with no words below it that a reader may save or quote by itself. */
function Figure({ svg }: { svg: string | undefined }) {
  return (
    svg && (
      <figure class="picture">
        <raw-html html={svg} />
      </figure>
    )
  );
}

/** Baits with what the sums use of them. */
export function BaitsPage({ view }: { view: View }) {
  const { say, figures, library } = view;
  const paced = pacedWay(view);
  return (
    <>
      <PageHead title={say("baits.title")} lead={say("baits.lead")} />
      {library.baits.map(({ bait, notes }) => (
        <section aria-labelledby={bait.id}>
          <h2 id={bait.id}>{bait.title}</h2>
          <Figure svg={view.drawBait(bait.id)} />
          <table class="pairs">
            <caption class="unseen">{bait.title}</caption>
            <tbody>
              <tr>
                <th scope="row">{say("table.mass")}</th>
                <td>{figures.statedMass(bait.massG)}</td>
              </tr>
              <tr>
                <th scope="row">{say("baits.fall")}</th>
                <td>
                  {bait.fallMs === undefined
                    ? say("baits.not-timed")
                    : say("baits.fall-text", {
                        way: paced.one,
                        time: figures.time(paced.oneM / bait.fallMs),
                      })}
                </td>
              </tr>
              <tr>
                <th scope="row">{say("basis.title")}</th>
                <td>{say(`basis.${keyOf(bait.basis)}`)}</td>
              </tr>
            </tbody>
          </table>
          {view.markdown(
            { path: `baits/${bait.id}.yaml`, body: notes },
            { level: 3, idPrefix: `${bait.id}-` },
          )}
        </section>
      ))}
    </>
  );
}

/** Kinds of fish and what each asks of a rig. */
export function FishPage({ view }: { view: View }) {
  const { say, figures, library, href } = view;
  return (
    <>
      <PageHead title={say("fish.title")} lead={say("fish.lead")}>
        {library.lines && (
          <p>
            {say("fish.line-basis", {
              basis: say(`basis.${keyOf(library.lines.basis)}`),
              source: library.lines.source,
            })}
          </p>
        )}
      </PageHead>
      {library.species.map(({ id, title, also, asks, notes }) => {
        const rigs = library.rigs.filter((rig) => kindsCaught(library, rig).includes(title));
        return (
          <section aria-labelledby={id}>
            <h2 id={id}>{title}</h2>
            <Figure svg={view.drawFish(id)} />
            <p>{asks}</p>
            {lineOf(library, [title, ...also]).map(({ fish, mainLine, hookLine }) => (
              <p>
                {say("fish.line", {
                  fish,
                  main: figures.strengthBand(mainLine.leastG, mainLine.mostG),
                  hook: figures.strengthBand(hookLine.leastG, hookLine.mostG),
                })}
              </p>
            ))}
            {view.markdown({ path: `species/${id}.yaml`, body: notes }, { level: 3, idPrefix: `${id}-` })}
            {rigs.length > 0 && (
              <>
                <p>{say("fish.rigs")}</p>
                <ul class="files">
                  {rigs.map((rig) => (
                    <li>
                      <a href={href(sitePaths.rig(rig.id))}>{rig.title}</a>
                    </li>
                  ))}
                </ul>
              </>
            )}
          </section>
        );
      })}
    </>
  );
}

/** The line that a fish asks for, by each of its names that has one. */
function lineOf({ lines }: Library, names: readonly string[]): readonly LineForFish[] {
  const known = names.map((name) => name.toLowerCase());
  return lines?.rows.filter(({ fish }) => known.includes(fish.toLowerCase())) ?? [];
}
