import { lengthMm } from "../../src/core/float/float.ts";
import { floatParts, thicknessMm } from "../../src/drawing/float/float-parts.ts";
import { sitePaths } from "../../src/model/addresses.ts";
import type { FloatEntry } from "../../src/model/library.ts";
import { keyOf } from "../../src/words/words.ts";
import { PageHead } from "./page-head.tsx";
import { Picture } from "./picture.tsx";
import type { View } from "./view.ts";

/** Every float: what it is for, what it takes, and the rigs that use it. */
export function FloatsPage({ view }: { view: View }) {
  const { say, library } = view;
  const bySize = library.floats.toSorted((a, b) => a.float.capacityG - b.float.capacityG);
  return (
    <>
      <PageHead title={say("floats.title")} lead={say("floats.lead")} />
      <nav class="on-page" aria-label={say("on-this-page")}>
        <ul>
          {library.floats.map(({ float }) => (
            <li>
              <a href={`#${float.id}`}>{float.title}</a>
            </li>
          ))}
          <li>
            <a href="#side-by-side">{say("floats.side-by-side")}</a>
          </li>
        </ul>
      </nav>
      {library.floats.map((entry) => (
        <FloatPart view={view} entry={entry} />
      ))}
      <section aria-labelledby="side-by-side">
        <h2 id="side-by-side">{say("floats.side-by-side")}</h2>
        <Picture draw={() => view.drawFloatChart(bySize.map(({ float }) => float.id))} />
      </section>
    </>
  );
}

function FloatPart({ view, entry }: { view: View; entry: FloatEntry }) {
  const { say, figures, library, href } = view;
  const { float } = entry;
  const rigs = library.rigs.filter(({ rig }) => rig.float.id === float.id);
  const [tip] = floatParts(float);
  const rows: [string, string][] = [
    [say("floats.held"), say(`attachment.${keyOf(float.attachment)}`)],
    [
      say("floats.takes"),
      say(`floats.takes-${float.capacityBasis}`, {
        marking: entry.marking,
        mass: figures.mass(float.capacityG),
        metal: say(`metal.${float.capacityMetal}`),
      }),
    ],
    [say("floats.tip-then"), figures.tip(float.tipShowingMm)],
    [say("floats.length"), figures.gap(lengthMm(float))],
    [say("floats.tip-diameter"), figures.diameter(thicknessMm(float, tip!))],
    ...(float.selfLoadG > 0
      ? [[say("floats.self-load"), figures.mass(float.selfLoadG)] as [string, string]]
      : []),
    [say("basis.title"), say(`basis.${keyOf(entry.basis)}`)],
  ];
  return (
    <section class="float" aria-labelledby={float.id}>
      <h2 id={float.id}>{float.title}</h2>
      <p class="lead">{entry.summary}</p>
      <div class="side-by-side">
        <Picture draw={() => view.drawFloat(float, float.id)} />
        <div>
          <table class="pairs">
            <caption class="unseen">{float.title}</caption>
            <tbody>
              {rows.map(([name, value]) => (
                <tr>
                  <th scope="row">{name}</th>
                  <td>{value}</td>
                </tr>
              ))}
            </tbody>
          </table>
          {view.markdown(entry, { level: 3, idPrefix: `${float.id}-` })}
          {rigs.length > 0 && (
            <p>
              {say("floats.used-by")}{" "}
              {rigs.map(({ id, title }, index) => (
                <>
                  {index > 0 && ", "}
                  <a href={href(sitePaths.rig(id))}>{title}</a>
                </>
              ))}
            </p>
          )}
        </div>
      </div>
    </section>
  );
}
