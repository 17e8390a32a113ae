import type { SolvedDepth, SolvedRig } from "../../src/model/solved.ts";
import type { TextPart } from "../../src/words/water-text.ts";
import { Picture } from "./picture.tsx";
import type { Voice } from "./view.ts";

interface InWaterProps {
  readonly voice: Voice;
  readonly solved: SolvedRig;
  readonly depth: SolvedDepth;
  readonly id: string;
}

/** How the rig sinks, how its bite feels, and how it hangs in the current, where that was reckoned. */
export function InWaterPart({ voice, solved, depth, id }: InWaterProps) {
  const text = voice.inWater(solved, depth);
  if (!text) return null;
  const { sink, lift, flow } = text;
  return (
    <details class="more in-water">
      <summary>{voice.say(flow.length > 0 ? "in-water.title-flowing" : "in-water.title-still")}</summary>
      <div class="side-by-side">
        <div>
          <Picture draw={() => voice.drawSink(solved, depth, `${id}-sink`)} />
          <TextPartView part={sink} />
          {lift && flow.length > 0 && <TextPartView part={lift} />}
        </div>
        {flow.length > 0 && (
          <div>
            <Picture draw={() => voice.drawHang(solved, depth, `${id}-hang`)} />
            {flow.map((part) => (
              <TextPartView part={part} />
            ))}
          </div>
        )}
        {lift && flow.length === 0 && (
          <div>
            <TextPartView part={lift} />
          </div>
        )}
      </div>
    </details>
  );
}

/** A table made as text, the first cell of each row naming it, with what is said below. */
export function TextPartView({ part: { caption, table, notes } }: { part: TextPart }) {
  return (
    <>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {table.head.map((text) => (
              <th scope="col">{text}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(([name, ...cells]) => (
            <tr>
              <th scope="row">{name}</th>
              {cells.map((text) => (
                <td>{text}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {notes.map((note) => (
        <p>{note}</p>
      ))}
    </>
  );
}
