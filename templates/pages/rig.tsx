import { sitePaths } from "../../src/model/addresses.ts";
import type { RigEntry } from "../../src/model/library.ts";
import type { SolvedRig } from "../../src/model/solved.ts";
import { keyOf } from "../../src/words/words.ts";
import { DepthPart, depthId } from "./depth.tsx";
import { FitAnswer, FitPart, OwnPace, rigScripts, typedDepth, WaterBar } from "./fit.tsx";
import { TextPartView } from "./in-water.tsx";
import { PageHead } from "./page-head.tsx";
import { MakeItUp, WhatYouNeed } from "./rig-need.tsx";
import { hasSafety, type View } from "./view.ts";

interface RigProps {
  readonly view: View;
  readonly entry: RigEntry;
  readonly solved: SolvedRig;
}

/** One rig: first the reader's water and the rig made for it, then what to get and how to put it together. */
export function RigPage({ view, entry, solved }: RigProps) {
  const { say } = view;
  return (
    <article class="rig">
      <PageHead title={entry.title} lead={entry.rig.purpose} />
      <OnThisPage view={view} />
      <Depths view={view} entry={entry} solved={solved} />
      <RigMarks view={view} entry={entry} />
      <div class="side-by-side">
        <WhatYouNeed view={view} entry={entry} solved={solved} />
        <MakeItUp view={view} entry={entry} solved={solved} />
      </div>
      <When view={view} entry={entry} />
      <FeedPart view={view} entry={entry} solved={solved} />
      <section aria-labelledby="notes">
        <h2 id="notes">{say("rig.notes")}</h2>
        {view.markdown(entry, { level: 3, idPrefix: "notes-" })}
      </section>
      <LeadNote view={view} />
    </article>
  );
}

/** Cards of the depths that the rig's file names; a fitted rig has a card of its own. */
function BuiltCards({ view, entry }: { view: View; entry: RigEntry }) {
  const { say, href } = view;
  const toPrint = view.printablesOf(entry.id);
  const card = toPrint.find(({ kind }) => kind === "card");
  const hasOthers = toPrint.length > (card ? 1 : 0);
  return (
    <p class="buttons">
      {card && (
        <a id="built-card" class="button" href={href(card.path)}>
          {say("printables.get-card")}
        </a>
      )}
      {hasOthers && <a href={href(sitePaths.printables)}>{say("printables.other-sizes")}</a>}
    </p>
  );
}

function OnThisPage({ view: { say } }: { view: View }) {
  const parts = [
    ["depths", say("fit.your-water")],
    ["fit", say("fit.short-title")],
    ["need", say("need.title")],
    ["make", say("make.title")],
    ["feed", say("rig.feed")],
    ["notes", say("rig.notes")],
  ] as const;
  return (
    <nav class="on-page in-line" aria-label={say("on-this-page")} data-unsearched="">
      <ul>
        {parts.map(([id, name]) => (
          <li>
            <a href={`#${id}`}>{name}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** The marks a reader picks a rig by. */
export function RigMarks({ view, entry }: { view: View; entry: RigEntry }) {
  const { say, figures } = view;
  const { rig } = entry;
  const shallow = Math.min(...rig.depthsMm);
  const deep = Math.max(...rig.depthsMm);
  return (
    <ul class="marks">
      <li>{say(`level.${entry.level}`)}</li>
      <li>{say(`water.${rig.water}`)}</li>
      <li>
        {shallow === deep
          ? say("rig.one-depth", { depth: figures.shortDepth(deep) })
          : say("rig.depth-range", { from: figures.shortDepth(shallow), to: figures.shortDepth(deep) })}
      </li>
      <li>{say(`pattern.${keyOf(rig.pattern.kind)}`)}</li>
      {entry.catches.length > 0 && <li>{say("rig.catches", { fish: entry.catches.join(", ") })}</li>}
    </ul>
  );
}

function When({ view: { say }, entry }: { view: View; entry: RigEntry }) {
  const lists = [
    ["when", entry.useWhen],
    ["not-when", entry.notWhen],
    ["change-first", entry.changeFirst],
  ] as const;
  return (
    <div class="side-by-side">
      {lists
        .filter(([, items]) => items.length > 0)
        .map(([key, items]) => (
          <section aria-labelledby={key}>
            <h2 id={key}>{say(`rig.${key}`)}</h2>
            <ul>
              {items.map((item) => (
                <li>{item}</li>
              ))}
            </ul>
          </section>
        ))}
    </div>
  );
}

function Depths({ view, entry, solved }: RigProps) {
  const { say, figures } = view;
  return (
    <section aria-labelledby="depths" data-unsearched="">
      <h2 id="depths">{say("rig.pick-depth")}</h2>
      <OwnPace view={view} entry={entry} />
      <WaterBar view={view} entry={entry} />
      <nav class="depth-picker" aria-label={say("rig.pick-depth")}>
        <ul>
          {solved.depths.map((depth) => (
            <li>
              <a href={`#${depthId(depth)}`} data-depth={typedDepth(view, depth.depthMm)}>
                {figures.shortDepth(depth.depthMm)}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <p id="depth-shown" class="unseen" role="status" />
      <FitAnswer view={view} />
      <div id="depths-built">
        <BuiltCards view={view} entry={entry} />
        {solved.depths.map((depth, at) => (
          <DepthPart voice={at === 0 ? view : withoutPlots(view)} solved={solved} depth={depth} />
        ))}
      </div>
      <p class="needs-script">
        <a id="try-link" href={`${view.href(sitePaths.tryIt)}?rig=${entry.id}`}>
          {say("try.link")}
        </a>
      </p>
      <RigFilms view={view} entry={entry} />
      <FitPart view={view} entry={entry} />
      <AtAGlance view={view} solved={solved} />
    </section>
  );
}

/** Films of the rig, drawn by the page's script once somebody asks for them. */
function RigFilms({ view, entry }: { view: View; entry: RigEntry }) {
  const { say, href } = view;
  return (
    <details
      id="rig-films"
      class="needs-script"
      data-scripts={rigScripts(view, entry.id, "try.js")}
      data-worker={href(sitePaths.asset("sums-worker.js"))}
      data-failed={say("try.failed")}
    >
      <summary>{say("rig.films")}</summary>
    </details>
  );
}

const none = () => undefined;

/** How it sinks and hangs is drawn for the first depth; the others have it in figures, or would weigh a page down. */
const withoutPlots = (view: View): View => ({ ...view, drawSink: none, drawHang: none });

function AtAGlance({ view: { say, figures, rigTexts }, solved }: { view: View; solved: SolvedRig }) {
  return (
    <section class="scroll" aria-label={say("rig.all-depths")} tabindex="0">
      <table class="glance">
        <caption>{say("rig.all-depths")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("table.depth")}</th>
            <th scope="col">{rigTexts.measuredFrom(solved)}</th>
            <th scope="col">{say("rig.lock")}</th>
            <th scope="col">{say("rig.down-the-line")}</th>
          </tr>
        </thead>
        <tbody>
          {solved.depths.map((depth) => (
            <tr>
              <th scope="row">{figures.shortDepth(depth.depthMm)}</th>
              <td>{figures.shortGap(figures.settingMm(depth))}</td>
              <td>{figures.lock(depth.lock)}</td>
              <td>{figures.shotPlaces(depth.lineShot)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function FeedPart({ view: { say, figures, feedPlaces }, entry: { rig }, solved }: RigProps) {
  const { feed } = rig;
  return (
    <section aria-labelledby="feed">
      <h2 id="feed">{say("rig.feed")}</h2>
      <p>
        {say("rig.feed-text", {
          what: feed.what,
          portion: figures.volume(feed.portionMl),
          every: figures.time(feed.everyS),
        })}
      </p>
      {feed.note && <p>{feed.note}</p>}
      <p>
        {say("rig.feed-session", {
          session: figures.time(feed.forS),
          volume: figures.volume(solved.sessionFeed.volumeMl),
        })}
      </p>
      {feedPlaces(solved).map((part) => (
        <TextPartView part={part} />
      ))}
    </section>
  );
}

function LeadNote({ view }: { view: View }) {
  const { say, figures, library, href } = view;
  const { place, allowedUpToG, allowedAboveG, checked } = library.guide.leadRule;
  const upTo = figures.statedMass(allowedUpToG);
  return (
    <aside class="note" aria-labelledby="lead" data-unsearched="">
      <h2 id="lead">{say("lead.title")}</h2>
      <p>
        {checked === undefined
          ? say("lead.rule-unread", { place, upTo })
          : say(allowedAboveG === undefined ? "lead.rule-below" : "lead.rule-between", {
              place,
              upTo,
              above: figures.statedMass(allowedAboveG ?? 0),
              checked: figures.date(checked),
            })}
      </p>
      {hasSafety(view) && (
        <p>
          <a href={href(sitePaths.safety)}>{say("lead.more")}</a>
        </p>
      )}
    </aside>
  );
}
