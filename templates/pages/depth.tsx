import { isToldAsBefore } from "../../src/core/depth/told-apart.ts";
import { shotNamed } from "../../src/core/tackle/shot-groups.ts";
import { allShot, type GuideStep, type SolvedDepth, type SolvedRig } from "../../src/model/solved.ts";
import { keyOf } from "../../src/words/words.ts";
import { InWaterPart } from "./in-water.tsx";
import type { PageKey } from "./page-words.ts";
import { Picture } from "./picture.tsx";
import { PlumbingPart } from "./plumbing.tsx";
import { type ShotRow, shotRows } from "./shot-groups.ts";
import type { Voice } from "./view.ts";

interface DepthProps {
  readonly voice: Voice;
  readonly solved: SolvedRig;
  readonly depth: SolvedDepth;
  /** Anchor, where it is not the depth's own. */
  readonly id?: string;
}

/** Anchor of a depth on its rig's page. */
export function depthId(depth: SolvedDepth): string {
  return `depth-${Math.round(depth.depthMm / 10)}`;
}

/** A rig made up for one depth: picture, settings, where each shot goes, and what the float says. */
export function DepthPart({ voice, solved, depth, id = depthId(depth) }: DepthProps) {
  const { say, figures } = voice;
  return (
    <section class="depth" id={id} aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{say("rig.in-depth", { depth: figures.depth(depth.depthMm) })}</h3>
      <Findings voice={voice} depth={depth} />
      <div class="depth-columns">
        <Picture draw={() => voice.drawRig(solved, depth, id)} />
        <div>
          <KeyFigures voice={voice} solved={solved} depth={depth} />
          <ShotTable voice={voice} depth={depth} />
          <TipTable voice={voice} depth={depth} />
        </div>
      </div>
      <GuideTable voice={voice} solved={solved} depth={depth} />
      {voice.rigTexts.untold(depth).map((text) => (
        <p>{text}</p>
      ))}
      <PlumbingPart voice={voice} depth={depth} />
      <InWaterPart voice={voice} solved={solved} depth={depth} id={id} />
    </section>
  );
}

function KeyFigures({ voice: { say, figures, rigTexts }, solved, depth }: DepthProps) {
  return (
    <dl class="key-figures">
      <div>
        <dt>{rigTexts.measuredFrom(solved)}</dt>
        <dd>{figures.gap(figures.settingMm(depth))}</dd>
      </div>
      <div>
        <dt>{say("rig.tip-showing")}</dt>
        <dd>
          {figures.tip(depth.tipAsSetMm)}
          <small>{say("rig.give-or-take", { band: figures.tipBand(depth.tipUncertaintyMm) })}</small>
        </dd>
      </div>
      <div>
        <dt>{say("rig.shot-in-all")}</dt>
        <dd>{figures.mass(depth.massG)}</dd>
      </div>
    </dl>
  );
}

function ShotTable({ voice, depth }: Omit<DepthProps, "solved">) {
  const { say } = voice;
  const rows = shotRows(depth);
  return (
    <table>
      <caption>{say("rig.shot-caption")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("table.shot")}</th>
          <th scope="col">{say("rig.up-from-hook")}</th>
          <th scope="col">{say("rig.what-for")}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr>
            <th scope="row">{voice.figures.shot(row.shots)}</th>
            <td>{row.role === "lock" ? voice.figures.lock(depth.lock) : placeOf(voice, row)}</td>
            <td>{say(`role.${row.role}`)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function placeOf({ say, figures }: Voice, { fromHookMm, toHookMm, gapMm }: ShotRow): string {
  if (gapMm === 0) return figures.gap(fromHookMm);
  return say("rig.run", {
    from: figures.shortGap(fromHookMm),
    to: figures.shortGap(toHookMm),
    gap: figures.gap(gapMm),
  });
}

function GuideTable({ voice, solved, depth }: DepthProps) {
  const { say, figures, rigTexts } = voice;
  const flow = rigTexts.guidedFlow(depth);
  return (
    <table class="guide">
      <caption>{flow ? say("rig.guide-caption-flowing", { flow }) : say("rig.guide-caption")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("table.hook-set")}</th>
          <th scope="col">{say("rig.float-does")}</th>
          {flow && <th scope="col">{say("in-water.bait")}</th>}
          <th scope="col">{say("rig.tip-showing")}</th>
        </tr>
      </thead>
      <tbody>
        {depth.guideRows.map((step) => {
          const run = flow ? rigTexts.run(step) : undefined;
          return (
            <tr class={step.advice === "start-here" ? "chosen" : undefined}>
              <th scope="row">
                {run?.setting ?? figures.hookSet(step.overdepthMm, step.toOverdepthMm)}
                <span class="beside">
                  {rigTexts.measuredFrom(solved)}{" "}
                  {figures.shortGap(figures.settingMm({ ...step, depthMm: depth.depthMm }))}
                </span>
              </th>
              <td>
                {run?.float ?? whatFloatDoes(voice, step, depth)}
                <span class="beside">{rigTexts.advice(step)}</span>
              </td>
              {run && <td>{run.bait}</td>}
              <td>
                {step.tipShowingMm === null
                  ? say(step.state === "lies flat" ? "rig.no-tip-lies-flat" : "rig.no-tip-under")
                  : figures.tip(step.tipShowingMm)}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function whatFloatDoes(
  { say, figures }: Voice,
  step: GuideStep,
  { lineShot, guideRows }: SolvedDepth,
): string {
  const baitOnly = step.state === "rests on the bed" && step.shotOnBed.length === 0;
  if (baitOnly) {
    const isAsHung = guideRows.some((row) => row.state === "hangs" && isToldAsBefore(step, row));
    return say(isAsHung ? "state.bait-on-the-bed" : "state.bait-on-the-bed-risen");
  }
  const state = say(`state.${keyOf(step.state)}`);
  if (step.shotOnBed.length === 0) return state;
  const shot = figures.shot(shotNamed(step.shotOnBed, lineShot));
  const lies = step.state === "rests on the bed";
  return lies ? say("rig.on-the-bed", { shot }) : say("rig.with-on-the-bed", { state, shot });
}

/** Sizes told in the table of what a shot does: the lightest that the rig itself uses. */
const sizesTold = 3;

function TipTable({ voice: { say, figures, rigTexts }, depth }: Omit<DepthProps, "solved">) {
  const used = new Set(allShot(depth).map(({ size }) => size));
  const effects = depth.shotEffects
    .filter(({ size }) => used.has(size))
    .sort((a, b) => a.massG - b.massG)
    .slice(0, sizesTold);
  const tip = (mm: number | null | undefined, none: PageKey) =>
    typeof mm === "number" ? figures.tip(mm) : say(none);
  if (effects.length === 0) return <p>{rigTexts.tip(depth)}</p>;
  return (
    <>
      <table>
        <caption>{say("rig.tip-caption")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("table.shot")}</th>
            <th scope="col">{say("table.one-fewer")}</th>
            <th scope="col">{say("table.one-more")}</th>
          </tr>
        </thead>
        <tbody>
          {effects.map(({ size, oneFewerMm, oneMoreMm }) => (
            <tr>
              <th scope="row">{size.replaceAll(" ", "\u00a0")}</th>
              <td>{tip(oneFewerMm, "rig.no-tip-lies-flat")}</td>
              <td>{tip(oneMoreMm, "rig.no-tip-under")}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{rigTexts.tip(depth)}</p>
    </>
  );
}

function Findings({ voice, depth }: Omit<DepthProps, "solved">) {
  if (depth.findings.length === 0) return null;
  return (
    <ul class="findings">
      {depth.findings.map((finding) => (
        <li>{voice.reason(finding)}</li>
      ))}
    </ul>
  );
}
