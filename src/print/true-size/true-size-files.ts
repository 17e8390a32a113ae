import { GaugeTable, SlotFigure, TrueSizePage } from "../../../templates/handouts/true-size.tsx";
import { entry } from "../../core/lists.ts";
import { ballDiameterMm, type Shot } from "../../core/tackle/shot.ts";
import { drawShotSlot, forSlot, hardToTell } from "../../drawing/shot-slot.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import { asPaper } from "../../layout/paper.ts";
import { Box, mmPerPoint } from "../../markup/boxes.ts";
import type { Element } from "../../markup/jsx-runtime.ts";
import { printPaths } from "../../model/addresses.ts";
import { digestOf, digestOnce } from "../../model/digest.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { unbroken } from "../../words/shot-text.ts";
import { threeDepths } from "../cards/card-content.ts";
import { type DoesNotFit, notFitting } from "../does-not-fit.ts";
import { keptPage } from "../kept-page.ts";
import { painted, paintedOnce } from "../painted.ts";
import type { Press } from "../press.ts";
import type { PaintedFile } from "../printed-file.ts";
import { paperSizes, unprintableMm } from "../sheets/paper-sizes.ts";
import { checkBar, checkBarHeightMm } from "../sheets/sheet-marks.ts";
import { drawStripPiece, stripMarks, stripPieces } from "./strip.ts";

/** A page that is printed true to size. */
export interface TrueSizeFile {
  readonly path: string;
  readonly title: string;
  /** What the list of things to print calls it. */
  readonly listed: string;
  readonly of: string;
  readonly page: LaidOutPage;
  /** Stands for all that it is made from. */
  readonly from: string;
}

const bodyPt = 12;
const marginMm = unprintableMm + 3;
/** Length of a piece of the strip, and how many stand side by side on a page [mm]. */
const pieceMm = 200;
const piecesMax = 5;

/** The bank strip of each rig, and the gauge of all the shot in their tubs. */
export function layOutTrueSize(rigs: readonly SolvedRig[], press: Press): TrueSizeFile[] {
  const files = rigs.map((solved) => stripFile(solved, press));
  const [first] = rigs;
  if (first) files.push(gaugeFile(everyShot(rigs), first.rig.scaleTitle, press));
  return files;
}

/** Each size of the rigs' tubs once in each metal, heaviest first. */
function everyShot(rigs: readonly SolvedRig[]): readonly Shot[] {
  const kinds = rigs.flatMap(({ rig }) =>
    rig.tub.map((shot) => [`${shot.size} ${shot.metal}`, shot] as const),
  );
  return [...new Map(kinds).values()].sort((a, b) => b.massG - a.massG);
}

export function trueSizeProblems(files: readonly TrueSizeFile[]): DoesNotFit[] {
  return files.flatMap(({ of, page }) =>
    notFitting(page.overflows, { of, format: "true-size", side: "front" }),
  );
}

export async function* trueSizeFiles(
  files: readonly TrueSizeFile[],
  press: Press,
): AsyncIterable<PaintedFile> {
  for (const { path, title, listed, page, from } of files) {
    const about = { path, printable: { kind: "handout", title: listed } } as const;
    const paint = () => painted([asPaper(page)], asPaper(page), press.facts(title), press);
    yield paintedOnce(about, "true size as PDF", from, paint, press);
  }
}

function stripFile(solved: SolvedRig, press: Press): TrueSizeFile {
  const { words } = press.kit;
  const { rig } = solved;
  const title = words("handout.strip.title", { rig: rig.title });
  const from = digestOf(press.from, "strip", digestOnce(rig));
  return {
    path: printPaths.strip(rig.id),
    title,
    listed: words("printable.strip", { rig: rig.title }),
    of: rig.id,
    page: keptPage(press.keep, "true size", from, () => stripPage(title, solved, press)),
    from,
  };
}

function stripPage(title: string, solved: SolvedRig, press: Press): LaidOutPage {
  const { words, figures } = press.kit;
  const { rig } = solved;
  const depths = threeDepths(solved.depths);
  const depth = entry(depths, Math.floor((depths.length - 1) / 2));
  const marks = stripMarks(depth, rig.hookLengthMm, press.kit);
  const pieces = stripPieces(marks, pieceMm, piecesMax);
  const widthMm = (paperSizes[press.guide.paper].widthMm - 2 * marginMm) / piecesMax;
  const figure = Box({
    tag: "Figure",
    alt: words("handout.strip.alt", { marks: marks.map(({ label }) => label).join("; ") }),
    style: { height: pieceMm + 4 },
    draw: () =>
      pieces.map((piece, i) => ({
        kind: "group",
        xMm: i * widthMm,
        yMm: 2,
        items: drawStripPiece(piece, 7, figures.ruler),
      })),
  });
  const lines = [words("handout.strip.how", { depth: unbroken(figures.shortDepth(depth.depthMm)) })];
  return layOutPage(title, lines, figure, press);
}

function gaugeFile(shot: readonly Shot[], scale: string, press: Press): TrueSizeFile {
  const { words, figures } = press.kit;
  const title = words("handout.gauge.title");
  const rows = shot.map(({ size, massG, metal }) => {
    const diameterMm = ballDiameterMm(massG, metal);
    const across = unbroken(figures.diameter(diameterMm));
    return {
      size: unbroken(size),
      mass: unbroken(figures.statedMass(massG)),
      metal: words(`metal.${metal}`),
      across,
      diameterMm,
      alt: words("handout.gauge.alt", { size, across }),
    };
  });
  const head = (
    ["table.size", "table.mass", "table.metal", "handout.gauge.across", "handout.gauge.disc"] as const
  ).map((key) => words(key));
  const lines = [words("handout.gauge.how", { scale }), words("handout.gauge.slide"), howSure(shot, press)];
  const from = digestOf(press.from, "gauge", shot, scale);
  const page = keptPage(press.keep, "true size", from, () =>
    layOutPage(title, lines, [...slots(shot, press), GaugeTable({ head, rows })], press),
  );
  const listed = words("printable.shot-gauge");
  return { path: printPaths.shotGauge, title, listed, of: "shot-gauge", page, from };
}

/** What two diameters must differ by for a printed gauge to tell them apart [mm]; from memory. */
const tellsApartMm = 0.2;

const metalsOf = (shot: readonly Shot[]) => [...new Set(shot.map(({ metal }) => metal))];

/** A slot for each metal, as wide as the page. */
function slots(shot: readonly Shot[], { guide, kit, fonts }: Press): Element[] {
  const look = {
    lengthMm: paperSizes[guide.paper].widthMm - 2 * marginMm - 2 * slotInMm,
    textMm: 9 * mmPerPoint,
    measure: fonts.measure,
  };
  return metalsOf(shot).map((metal) => {
    const sizes = forSlot(shot.filter((one) => one.metal === metal));
    const { items, heightMm } = drawShotSlot(sizes, look);
    const title = kit.words("handout.gauge.slot", { metal: kit.words(`metal.${metal}`) });
    const alt = kit.words("handout.gauge.slot-alt", {
      metal: kit.words(`metal.${metal}`),
      sizes: sizes.map(({ size }) => size).join(", "),
    });
    return SlotFigure({ title, alt, heightMm, inMm: slotInMm, items });
  });
}

/** From the margin to a slot, for the names at its ends [mm]. */
const slotInMm = 5;

/** What this gauge cannot tell, and who knows better. */
function howSure(shot: readonly Shot[], { kit: { words, figures } }: Press): string {
  const runs = metalsOf(shot).flatMap((metal) =>
    hardToTell(forSlot(shot.filter((one) => one.metal === metal)), tellsApartMm).map((run) =>
      unbroken(words("handout.gauge.run", { sizes: run.join(", "), metal: words(`metal.${metal}`) })),
    ),
  );
  const sure = words("handout.gauge.sure", { least: unbroken(figures.diameter(tellsApartMm)) });
  return runs.length > 0 ? `${sure} ${words("handout.gauge.hard", { runs: runs.join("; ") })}` : sure;
}

function layOutPage(
  title: string,
  lines: readonly string[],
  children: Element | readonly Element[],
  press: Press,
): LaidOutPage {
  const { figures } = press.kit;
  const check = {
    text: press.kit.words("handout.check", { length: figures.small(figures.ruler.check.lengthMm) }),
    heightMm: checkBarHeightMm + 1,
    draw: (widthMm: number, heightMm: number) => checkBar(widthMm / 2, heightMm, figures.ruler.check),
  };
  const paper = paperSizes[press.guide.paper];
  return layOut(TrueSizePage({ title, lines, bodyPt, marginMm, check, children }), paper, press.fonts);
}
