import { movedPart } from "../../src/core/depth/setting.ts";
import { first, withId } from "../../src/core/lists.ts";
import { heaviestFirst } from "../../src/core/loading/loading.ts";
import type { Child } from "../../src/markup/jsx-runtime.ts";
import { sitePaths } from "../../src/model/addresses.ts";
import type { RigEntry } from "../../src/model/library.ts";
import { mostShot, type SolvedRig } from "../../src/model/solved.ts";
import { keyOf } from "../../src/words/words.ts";
import type { View } from "./view.ts";

interface NeedProps {
  readonly view: View;
  readonly entry: RigEntry;
  readonly solved: SolvedRig;
}

/** What to have in the box before the rig is made. */
export function WhatYouNeed({ view, entry, solved }: NeedProps) {
  const { say, figures, href } = view;
  const { rig } = entry;
  const rows: [string, Child][] = [
    ...whipRow(view, solved),
    [say("table.main-line"), lineText(view, rig.mainLine)],
    [
      say("table.hook-length"),
      say("need.hook-length-text", {
        length: figures.gap(rig.hookLengthMm),
        line: lineText(view, rig.hookLine),
      }),
    ],
    [
      say("need.float"),
      <a href={href(`${sitePaths.floats}#${rig.float.id}`)}>
        {say("need.float-text", {
          float: rig.float.title,
          marking: withId(view.library.floats, rig.float.id).marking,
        })}
      </a>,
    ],
    ...fittingsRow(view, rig),
    [
      say("table.shot"),
      <ul class="plain">
        {heaviestFirst(mostShot(solved)).map(({ count, ...shot }) => (
          <li>
            {say("need.shot-text", {
              shot: figures.shot(Array.from({ length: count }, () => shot)),
              metal: say(`metal.${shot.metal}`),
            })}
          </li>
        ))}
      </ul>,
    ],
    [say("need.hook"), say("need.hook-text", { size: rig.hook.size })],
    [say("need.bait"), <a href={href(`${sitePaths.baits}#${rig.bait.id}`)}>{rig.bait.title}</a>],
    [say("need.feed"), rig.feed.what],
    [say("need.tools"), say(rig.water === "flowing" ? "need.tools-flowing" : "need.tools-still")],
  ];
  return (
    <section aria-labelledby="need">
      <h2 id="need">{say("need.title")}</h2>
      <table class="pairs">
        <caption class="unseen">{say("need.title")}</caption>
        <tbody>
          {rows.map(([name, what]) => (
            <tr>
              <th scope="row">{name}</th>
              <td>{what}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{weakestPart(view, solved)}</p>
    </section>
  );
}

/** How long the whip and its line are, for a rig without a reel. */
function whipRow({ say, figures }: View, { rig, depths }: SolvedRig): [string, string][] {
  const whip = depths[0]?.whip;
  if (!whip) return [];
  const values = { whip: figures.depth(rig.rodLengthMm), line: figures.depth(whip.lineMm) };
  return [[say("need.whip"), say("need.whip-text", values)]];
}

/** What holds the float on the line, where no shot do. */
function fittingsRow({ say }: View, { float }: SolvedRig["rig"]): [string, string][] {
  if (float.attachment === "bottom")
    return float.heldByShot ? [] : [[say("need.fittings"), say("need.fittings-bottom-rubber")]];
  return [[say("need.fittings"), say(`need.fittings-${keyOf(float.attachment)}`)]];
}

/** Where the line breaks when a fish or a snag is too much for it. */
function weakestPart({ say, figures }: View, { lineChain }: SolvedRig): string {
  const { part, knot, lowG, highG } = lineChain.breaksFirst;
  const range = { low: figures.strength(lowG), high: figures.strength(highG) };
  const key = `need.breaks-${keyOf(part)}` as const;
  return knot ? say(`${key}-knot`, { ...range, knot: knot.knot.title }) : say(key, range);
}

function lineText({ say, figures }: View, line: { strengthG: number; diameterMm: number }): string {
  return say("need.line-text", {
    strength: figures.strength(line.strengthG),
    diameter: figures.diameter(line.diameterMm),
  });
}

/** The order in which the rig is put together. */
export function MakeItUp({ view, solved }: NeedProps) {
  const { say } = view;
  return (
    <section aria-labelledby="make">
      <h2 id="make">{say("make.title")}</h2>
      <ol class="steps">
        {steps(view, solved).map((step) => (
          <li>{step}</li>
        ))}
      </ol>
    </section>
  );
}

/** Line left below a float that is threaded on, for the shot, the loop and a wrong guess [mm]; common practice, no source. */
const lineLeftMm = 3000;

function steps({ say, figures }: View, { rig, depths }: SolvedRig): string[] {
  const shallowest = first(depths);
  const knot = (where: (typeof rig.knots)[number]["where"]) =>
    rig.knots.find((one) => one.where === where)?.knot.title;
  const hold = rig.float.heldByShot ? "shot" : "rubber";
  const { attachment } = rig.float;
  const loop = knot("main line loop");
  const hookKnot = knot("hook");
  const locks = shallowest.lockShot.length > 0;
  return [
    say(attachment === "bottom" ? `make.float-bottom-${hold}` : `make.float-${keyOf(attachment)}`, {
      line: figures.about(lineLeftMm),
    }),
    ...(shallowest.whip ? [say("make.whip", { line: figures.depth(shallowest.whip.lineMm) })] : []),
    ...(loop ? [say("make.loop", { knot: loop })] : []),
    ...(hookKnot
      ? [say("make.hook", { knot: hookKnot, size: rig.hook.size, length: figures.gap(rig.hookLengthMm) })]
      : []),
    say("make.join"),
    ...(locks ? [say("make.hold", { kept: figures.lock(shallowest.plumbing.kept) })] : []),
    say(`make.plumb.${keyOf(movedPart(rig.float))}`),
    ...(locks ? [say("make.lock", { lock: figures.lock(shallowest.lock) })] : []),
    ...(shallowest.lineShot.length > 0 ? [say("make.line-shot")] : []),
    shallowest.tipShowingMm > 0
      ? say("make.check-tip", { tip: figures.tip(shallowest.tipShowingMm) })
      : say("make.check-tip-under"),
  ];
}
