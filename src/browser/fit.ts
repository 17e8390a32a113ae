import { DepthPart } from "../../templates/pages/depth.tsx";
import { hangPicture, rigPicture, sinkPicture } from "../../templates/pages/rig-picture.ts";
import type { Voice } from "../../templates/pages/view.ts";
import { first } from "../core/lists.ts";
import { mostOfEachSize, type SolvedDepth, type SolvedRig } from "../model/solved.ts";
import { type UnitChoice, unitChoices } from "../model/unit-choice.ts";
import { reasonText } from "../words/reason.ts";
import { rigTexts } from "../words/rig-texts.ts";
import { waterText } from "../words/water-text.ts";
import { kitIn } from "./asked-rig.ts";
import { besideBy, type Standing } from "./beside.ts";
import { boxForm } from "./box-form.ts";
import { offerCard, withdrawCard } from "./fit-card.ts";
import { guide, loadedNotes, loadedRig, say, scaleOf, words } from "./fit-data.ts";
import { problemsSaid, showProblems } from "./fit-problems.ts";
import { fitRig } from "./fit-rig.ts";
import { anotherTask, giveWay } from "./give-way.ts";
import { holdPlace } from "./hold-place.ts";
import { insteadOf } from "./instead.ts";
import { keepAnswers, keptAnswers } from "./kept-answers.ts";
import { paceParts, paceText } from "./pace-fields.ts";
import { dataOf, partById, partWithin } from "./page-parts.ts";
import { shareAddress } from "./share.ts";
import type { Made } from "./sums.ts";
import { toDom, toDomInTurns } from "./to-dom.ts";

const form = partById<HTMLFormElement>("fit-form");
const result = partById("fit-result");
const status = partById("fit-status");
const said = partById("fit-said");
const brief = partById("fit-brief");
const bar = partWithin(document, ".water-bar");
const slider = partById<HTMLInputElement>("fit-slider");
const tryLink = partById<HTMLAnchorElement>("try-link");
const rig = loadedRig();
const notes = loadedNotes();
const scale = scaleOf(rig);
const fields = [...form.elements].filter(
  (field): field is HTMLInputElement | HTMLSelectElement => "name" in field && field.name !== "",
);
const fieldOf = (name: string) => fields.find((field) => field.name === name);
const depthField = fieldOf("depth") as HTMLInputElement;
const paceField = fieldOf("pace");
const [paceWay, paceTime] = ["fit-pace-way", "fit-pace-time"].map(
  (id) => document.getElementById(id) as HTMLInputElement | null,
);
const sliderStepMm = Number(slider.dataset.stepMm);
const box = boxForm(partWithin(form, ".box"));
/** Where the page has to do the long sums itself, they wait until nobody is typing. */
const typingPauseMs = 250;
const worker = dataOf(partById("fit"), "worker");
const notLoaded = () => showNothing(say("fit.not-loaded"));
/** Two, so that no new water waits for the fall of the last. */
const [firstSums, longSums] = [besideBy(worker, notLoaded), besideBy(worker, notLoaded, typingPauseMs)];

const announcePauseMs = 700;
let announceTimer: ReturnType<typeof setTimeout> | undefined;

function refit(): void {
  const changed = new Map(
    fields.filter((one) => one.value !== ownValue(one)).map(({ name, value }) => [name, value]),
  );
  keepInAddress(changed);
  // Or, where sums take long, it would be told of signs that have been typed over.
  clearTimeout(announceTimer);
  const units = unitsChosen();
  const { rig: fitted, problems, box: shot } = fitRig(rig, scale, changed, units);
  showProblems(problems, fields, () => kitIn(units).figures, refit);
  if (problems.length > 0) {
    showNothing(say("fit.unread"));
    return;
  }
  // What is shown stays, so that nothing flickers, and says of which water it is; but no card is had of it any more.
  withdrawCard();
  longSums.drop();
  result.setAttribute("aria-busy", "true");
  const told = new Map(["depth", "pace", "units", "box"].map((name) => [name, changed.get(name)]));
  firstSums.ask("make", { rig: fitted, ...(shot && { box: shot }) }, async (made, standing) => {
    const voice = voiceIn(units);
    if (made.ok) await showMade(made.value, voice, units, standing);
    if (!standing.isLast) return;
    if (made.ok) {
      keepAnswers(Object.fromEntries(told));
      return;
    }
    showNothing([say("fit.failed"), ...made.findings.map(voice.reason)].join(" "));
    if (shot) insteadOf(fitted, changed.get("box")!, voice.reason, result, longSums);
  });
}

/** Is shown whole, though it is made bit by bit. While the slider is drawn it may be of a water before that in the field. */
async function showMade(made: Made, voice: Voice, units: UnitChoice, standing: Standing): Promise<void> {
  const { solved, boxed } = made;
  const depth = first(solved.depths);
  const nodesOf = (shown: SolvedDepth) =>
    toDomInTurns(DepthPart({ voice, solved, depth: shown, id: "fitted" }));
  const nodes = await nodesOf(depth);
  if (standing.isDropped) return;
  const done = say("fit.done", { depth: voice.figures.depth(depth.depthMm) });
  const exact = boxed && !depth.findings.some(({ code }) => code.startsWith("box."));
  holdPlace(result, bar, () => {
    showResult(nodes);
    showBrief(solved, depth, voice);
    if (!standing.isLast) return;
    // What stands above it comes in the same turn, or it would be seen to move down.
    offerCard({ solved, kit: kitIn(units), notes });
    status.textContent = exact ? `${done} ${say("fit.box-exact")}` : done;
  });
  await giveWay();
  if (!standing.isLast) return;
  result.removeAttribute("aria-busy");
  slider.value = String(Math.round(depth.depthMm / sliderStepMm));
  slider.setAttribute("aria-valuetext", voice.figures.depth(depth.depthMm));
  box.askCounts(mostOfEachSize({ depths: [depth] }));
  announce([status.textContent, ...depth.findings.map(voice.reason)].join(" "));
  // The part of the water keeps its room meanwhile, so that nothing jumps while the slider is drawn.
  longSums.ask("inWater", made, async (full, inTime) => {
    if (!full) return;
    const wet = await nodesOf(full);
    if (!inTime.isLast) return;
    holdPlace(result, bar, () => showResult(wet));
    result.style.minHeight = "";
    const news = full.findings.filter((finding) => !depth.findings.includes(finding));
    if (boxed && news.length > 0) announce([done, ...full.findings.map(voice.reason)].join(" "));
  });
}

/** What is set, beside the depth, and a way up to what the sums warn of. */
function showBrief(solved: SolvedRig, depth: SolvedDepth, voice: Voice): void {
  const set = say("fit.brief", {
    measure: voice.rigTexts.measuredFrom(solved),
    line: voice.figures.shortGap(voice.figures.settingMm(depth)),
    tip: voice.figures.tip(depth.tipAsSetMm),
  });
  const toMind = say("fit.to-mind", { count: depth.findings.length });
  const link = { type: "a", key: null, props: { href: "#fitted", children: toMind } };
  brief.replaceChildren(...toDom(depth.findings.length > 0 ? [set, " ", link] : set));
}

function voiceIn(units: UnitChoice): Voice {
  const kit = kitIn(units);
  const { figures } = kit;
  return {
    figures,
    say,
    reason: (finding) => reasonText(finding, words, figures),
    rigTexts: rigTexts({ words, figures }),
    inWater: (solved, depth) => waterText(solved, depth, kit),
    drawRig: (solved, depth, idPrefix) => rigPicture(solved, depth, kit, idPrefix),
    drawSink: (solved, depth, idPrefix) => sinkPicture(solved, depth, kit, idPrefix),
    drawHang: (solved, depth, idPrefix) => hangPicture(solved, depth, kit, idPrefix),
  };
}

/** What a field says where nobody has touched it. */
function ownValue(field: HTMLInputElement | HTMLSelectElement): string {
  if (field instanceof HTMLInputElement) return field.defaultValue;
  const options = [...field.options];
  return (options.find(({ defaultSelected }) => defaultSelected) ?? first(options)).value;
}

/** Parts that the reader has unfolded stay so. */
function showResult(nodes: readonly Node[]): void {
  if (result.childElementCount > 0) result.style.minHeight = `${result.offsetHeight}px`;
  const open = [...result.querySelectorAll("details")].map((part) => part.open);
  result.replaceChildren(...nodes);
  for (const [at, part] of [...result.querySelectorAll("details")].entries()) part.open = open[at] ?? false;
}

/** Read out once nobody types any more. */
function announce(text: string): void {
  clearTimeout(announceTimer);
  announceTimer = setTimeout(() => {
    said.textContent = text;
  }, announcePauseMs);
}

/** No figures, and above all no card, of a water that nobody asked for. */
function showNothing(why: string): void {
  firstSums.drop();
  longSums.drop();
  offerCard(undefined);
  result.replaceChildren();
  result.removeAttribute("aria-busy");
  result.style.minHeight = "";
  brief.textContent = "";
  status.textContent = why;
  announce([...problemsSaid(), why].join(" "));
}

function unitsChosen(): UnitChoice {
  const chosen = fieldOf("units")?.value;
  return unitChoices.find((choice) => choice === chosen) ?? guide.units;
}

/** The depth and what else was typed stand in the address, so that a coach can send them. */
function keepInAddress(changed: ReadonlyMap<string, string>): void {
  const query = new URLSearchParams([...new Map([["depth", depthField.value], ...changed])]);
  const address = `${location.pathname}?${query}`;
  history.replaceState(null, "", location.hash === "#fit" ? `${address}#fit` : address);
  shareAddress(address);
  tryLink.search = String(new URLSearchParams([["rig", rig.id], ...query]));
}

/** Puts in what the address has; without one, what is kept. A box is kept for the guide's own scale of shot. */
function fillIn(): void {
  const asked = new URLSearchParams(location.search);
  // Whoever picked one of the built depths has said what water it is.
  const picked = /^#depth-\d/.test(location.hash);
  const untouched = asked.size === 0 && !picked && depthField.value === depthField.defaultValue;
  for (const [name, value] of untouched ? Object.entries(keptAnswers()) : asked) {
    if (name === "box" && (!untouched || rig.scaleId === guide.scaleId)) box.write(value);
    const field = name === "box" ? undefined : fieldOf(name);
    if (field) field.value = value;
  }
  showPace();
}

function showPace(): void {
  if (paceField && paceWay && paceTime) [paceWay.value, paceTime.value] = paceParts(paceField.value);
}

for (const field of [paceWay, paceTime]) {
  field?.addEventListener("input", () => {
    paceField!.value = paceText(paceWay!.value, paceTime!.value);
    refit();
  });
}
form.addEventListener("input", refit);
depthField.addEventListener("input", refit);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  refit();
  depthField.scrollIntoView();
});
form.addEventListener("reset", () =>
  setTimeout(() => {
    box.write("");
    showPace();
    refit();
  }),
);

let frame = 0;
slider.addEventListener("input", () => {
  depthField.value = kitIn(unitsChosen()).figures.shortDepth(Number(slider.value) * sliderStepMm);
  cancelAnimationFrame(frame);
  frame = requestAnimationFrame(refit);
});
fillIn();
// Reading the script was work enough for one turn of the page.
void anotherTask().then(() => {
  // Whoever moved the slider first had it moved before this script was there.
  if (slider.value !== slider.defaultValue) slider.dispatchEvent(new Event("input"));
  else refit();
});
