import type { FlowFigure, InWater } from "../../src/solve/in-water.ts";
import type { SolvedDepth, SolvedRig } from "../../src/solve/solved.ts";
import type { Voice } from "./view.ts";

interface InWaterProps {
  readonly voice: Voice;
  readonly solved: SolvedRig;
  readonly depth: SolvedDepth;
  readonly id: string;
}

/** How the rig sinks, and how it hangs in the current, where that was reckoned. */
export function InWaterPart({ voice, solved, depth, id }: InWaterProps) {
  const { inWater } = depth;
  if (!inWater) return null;
  const sink = voice.drawSink(solved, depth, `${id}-sink`);
  const hang = voice.drawHang(solved, depth, `${id}-hang`);
  return (
    <details class="more in-water">
      <summary>
        {voice.say(inWater.flow.length > 0 ? "in-water.title-flowing" : "in-water.title-still")}
      </summary>
      <div class="side-by-side">
        <div>
          {sink && (
            <div class="picture">
              <raw-html html={sink} />
            </div>
          )}
          <SinkTable voice={voice} inWater={inWater} />
        </div>
        {inWater.flow.length > 0 && (
          <div>
            {hang && (
              <div class="picture">
                <raw-html html={hang} />
              </div>
            )}
            {[...new Set(inWater.flow.map(({ paceMs }) => paceMs))].map((paceMs) => (
              <FlowTable voice={voice} inWater={inWater} paceMs={paceMs} />
            ))}
          </div>
        )}
      </div>
    </details>
  );
}

function SinkTable({ voice: { say, figures }, inWater }: { voice: Voice; inWater: InWater }) {
  return (
    <table>
      <caption>{say("in-water.sink-caption")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("in-water.landing")}</th>
          <th scope="col">{say("in-water.upper")}</th>
          <th scope="col">{say("in-water.middle")}</th>
          <th scope="col">{say("in-water.lower")}</th>
          <th scope="col">{say("in-water.in-all")}</th>
        </tr>
      </thead>
      <tbody>
        {inWater.sink.map(({ landing, thirdsS, tenthsS }) => (
          <tr>
            <th scope="row">{say(`in-water.${landing}`)}</th>
            {thirdsS.map((time) => (
              <td>{figures.time(time)}</td>
            ))}
            <td>{figures.time(tenthsS.at(-1)!)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function FlowTable({ voice, inWater, paceMs }: { voice: Voice; inWater: InWater; paceMs: number }) {
  const { say, figures } = voice;
  const most = inWater.holdBackMax.find((one) => one.paceMs === paceMs);
  const pace = figures.pace(paceMs);
  return (
    <>
      <table>
        <caption>{say("in-water.flow-caption", { pace })}</caption>
        <thead>
          <tr>
            <th scope="col">{say("in-water.held")}</th>
            <th scope="col">{say("in-water.bait")}</th>
            <th scope="col">{say("in-water.set-deeper")}</th>
            <th scope="col">{say("in-water.feed")}</th>
          </tr>
        </thead>
        <tbody>
          {inWater.flow
            .filter((figure) => figure.paceMs === paceMs)
            .map((figure) => (
              <tr>
                <th scope="row">{heldBack(voice, figure)}</th>
                <td>{whereBait(voice, figure)}</td>
                <td>
                  {figure.extraDepthMm === null
                    ? say("in-water.not-at-all")
                    : figures.shortGap(Math.max(0, figure.extraDepthMm))}
                </td>
                <td>{whereFeed(voice, figure)}</td>
              </tr>
            ))}
        </tbody>
      </table>
      {most && <p>{say("in-water.hold-back-max", { pace, share: figures.share(most.share) })}</p>}
    </>
  );
}

function heldBack({ say }: Voice, { heldBackShare }: FlowFigure): string {
  if (heldBackShare === 0) return say("in-water.held-free");
  return say(heldBackShare === 1 ? "in-water.held-stopped" : "in-water.held-half");
}

/** Less than a beginner can see from the bank. */
const nowhereMm = 50;

function whereBait({ say, figures }: Voice, { leadMm }: FlowFigure): string {
  if (Math.abs(leadMm) < nowhereMm) return say("in-water.below");
  return say(leadMm > 0 ? "in-water.leads" : "in-water.trails", { gap: figures.shortGap(Math.abs(leadMm)) });
}

function whereFeed({ say, figures }: Voice, { feedUpstreamMm }: FlowFigure): string {
  const gap = figures.shortDepth(Math.abs(feedUpstreamMm));
  if (Math.abs(feedUpstreamMm) < nowhereMm) return say("in-water.at-float");
  return say(feedUpstreamMm > 0 ? "in-water.upstream" : "in-water.downstream", { gap });
}
