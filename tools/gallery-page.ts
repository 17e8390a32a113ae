import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { solveContent } from "../src/build/build.ts";
import type { Solved } from "../src/build/stages.ts";
import { disk } from "../src/cli/disk.ts";
import { variantsOf } from "../src/core/float/moved-float.ts";
import { stripOf } from "../src/drawing/film/film.ts";
import { drawFilm } from "../src/drawing/film/films.ts";
import { drawFloatChart } from "../src/drawing/float/float-chart.ts";
import { drawFloat } from "../src/drawing/float/float-drawing.ts";
import { drawFloatStates } from "../src/drawing/float/float-states.ts";
import { drawKnot } from "../src/drawing/knots/draw-knot.ts";
import type { Drawing } from "../src/drawing/model.ts";
import { paletteCss, type Theme } from "../src/drawing/palette.ts";
import type { Part } from "../src/drawing/parts/part.ts";
import { parts } from "../src/drawing/parts/parts.ts";
import { drawPatternCharts } from "../src/drawing/patterns/pattern-chart.ts";
import { drawPictures } from "../src/drawing/pictures.ts";
import { drawHangPlot, hangPlotRig, hangsAt } from "../src/drawing/plots/hang-plot.ts";
import { drawSinkPlot } from "../src/drawing/plots/sink-plot.ts";
import { drawRig } from "../src/drawing/rig/rig-drawing.ts";
import { drawScene } from "../src/drawing/scenes/draw-scene.ts";
import { holdOf } from "../src/drawing/scenes/make-up.ts";
import { drawShotGauge } from "../src/drawing/shot-gauge.ts";
import { drawingToSvg, fontFamily } from "../src/drawing/svg.ts";
import { filmsOf } from "../src/model/films.ts";
import { scenes } from "../src/model/pictures.ts";
import type { SolvedRig } from "../src/model/solved.ts";

/** Drawings that belong together on the page. */
interface Section {
  readonly title: string;
  readonly theme: Theme;
  readonly drawings: readonly Drawing[];
}

const card = { widthMm: 48, heightMm: 78 };
const page = { widthMm: 100, heightMm: 140 };
const phoneMm = 90;

function sections({ library, rigs, kit, source }: Solved): Section[] {
  const all = rigs.flatMap((rig) => rig.depths.map((depth) => ({ rig, depth })));
  const byDepth = [...rigs].sort((a, b) => a.depths.at(-1)!.depthMm - b.depths.at(-1)!.depthMm);
  const floats = library.floats.map(({ float }) => float);
  const startRig = rigs.find(({ rig }) => rig.float.heldByShot) ?? rigs[0]!;
  const onCard = { labels: "distances", textMm: 3.175 } as const;
  const onPage = { labels: "full", textMm: 4 } as const;
  const pictureRoom = { widthMm: phoneMm, textMm: 3.5 };
  const threes = <T>(list: readonly T[]) =>
    Array.from({ length: Math.ceil(list.length / 3) }, (_, i) => list.slice(3 * i, 3 * i + 3));
  return [
    {
      title: "Rigs on cards, in print",
      theme: "print",
      drawings: all.map(({ rig, depth }) => drawRig(rig, depth, card, kit, onCard)),
    },
    {
      title: "The same rigs over depth and up in the water",
      theme: "print",
      drawings: rigs.flatMap((rig) =>
        variantsOf(rig.depths[0]!, rig.rig.water)
          .slice(1)
          .map((variant) => drawRig(rig, rig.depths[0]!, card, kit, { ...onCard, variant })),
      ),
    },
    {
      title: "Rigs on pages",
      theme: "page",
      drawings: rigs.map((rig) => drawRig(rig, rig.depths.at(-1)!, page, kit, onPage)),
    },
    {
      title: "Patterns",
      theme: "page",
      drawings: ["still", "flowing"].flatMap((water) =>
        threes(byDepth.filter(({ rig }) => rig.water === water)).flatMap((group) =>
          drawPatternCharts(
            group.map((rig) => ({ rig, depth: rig.depths.at(-1)! })),
            { ...pictureRoom, waterMm: 100 },
            kit,
          ),
        ),
      ),
    },
    {
      title: "What the float says",
      theme: "page",
      drawings: rigs.map((rig) =>
        drawFloatStates(rig, rig.depths[0]!, { widthMm: phoneMm }, kit, { textMm: 3.3, panelMm: 40 }),
      ),
    },
    {
      title: "Floats",
      theme: "page",
      drawings: [
        drawFloatChart(floats, { widthMm: phoneMm, heightMm: 400 }, kit, pictureRoom),
        ...floats.map((float) => drawFloat(float, { widthMm: 70, heightMm: 250 }, kit)),
      ],
    },
    {
      title: "Sinking and hanging",
      theme: "page",
      drawings: rigs.flatMap((rig) => waterPlots(rig, kit)),
    },
    {
      title: "Films, in the pictures of their strips",
      theme: "page",
      drawings: [
        ...films(rigs).flatMap(({ film, rig, depth }) =>
          stripOf(drawFilm(film, rig, depth, pictureRoom, kit), kit).map(({ drawing, caption }) => ({
            ...drawing,
            description: caption,
          })),
        ),
        ...library.knots.flatMap(({ id }) =>
          drawPictures(source)({ picture: "film", film: "knot", knot: id }, pictureRoom, kit).map(
            ({ drawing, caption }) => ({ ...drawing, description: caption ?? "" }),
          ),
        ),
      ],
    },
    {
      title: "Scenes",
      theme: "page",
      drawings: [
        ...scenes.flatMap((scene) => drawScene(scene, startRig, pictureRoom, kit)),
        ...otherHolds(rigs).flatMap((rig) => drawScene("make-up", rig, pictureRoom, kit)),
      ],
    },
    {
      title: "Fish and baits",
      theme: "page",
      drawings: [
        ...library.species.map(({ id }) => ({ picture: "fish", fish: id }) as const),
        ...library.baits.map(({ bait }) => ({ picture: "bait", bait: bait.id }) as const),
      ].flatMap((reference) =>
        drawPictures(source)(reference, pictureRoom, kit).map(({ drawing }) => drawing),
      ),
    },
    {
      title: "Knots",
      theme: "print",
      drawings: library.knots.flatMap((knot) =>
        drawKnot(knot, { widthMm: 60, heightMm: (60 * knot.frame[1]) / knot.frame[0] }, kit),
      ),
    },
    {
      title: "Shot gauges",
      theme: "print",
      drawings: library.scales.map((scale) =>
        drawShotGauge(scale.sizes, ["lead", "tin", "tungsten"], { widthMm: 130, heightMm: 270 }, kit),
      ),
    },
    { title: "Parts", theme: "page", drawings: Object.entries(parts).map(drawPart) },
  ];
}

/** Each film of some rigs of every kind. */
function films(rigs: readonly SolvedRig[]) {
  const chosen = rigs.filter((_, i) => i % Math.ceil(rigs.length / 4) === 0);
  return chosen.flatMap((rig) =>
    filmsOf(rig, rig.depths[0]!).map((film) => ({ film, rig, depth: rig.depths[0]! })),
  );
}

/** A rig with rubbers and one with a stop knot, which are made up in another order. */
function otherHolds(rigs: readonly SolvedRig[]): SolvedRig[] {
  return (["rubbers", "stopKnot"] as const).flatMap((hold) => {
    const found = rigs.find(({ rig }) => holdOf(rig) === hold);
    return found ? [found] : [];
  });
}

function waterPlots(rig: SolvedRig, kit: Solved["kit"]): Drawing[] {
  const depth = rig.depths.at(-1)!;
  const { inWater } = depth;
  if (!inWater) return [];
  const box = { widthMm: phoneMm, heightMm: 90 };
  const curves = { id: rig.rig.id, title: rig.rig.title, sinks: inWater.sink };
  const hangs = hangsAt(depth, Math.max(...rig.rig.pacesMs));
  return [
    drawSinkPlot(curves, undefined, depth.depthMm, box, kit, { textMm: 3.5 }),
    ...(hangs.length > 0 ? [drawHangPlot(hangPlotRig(rig, depth), hangs, box, kit, { textMm: 3.5 })] : []),
  ];
}

function drawPart([name, part]: [string, Part<unknown>]): Drawing {
  return {
    widthMm: part.sampleWidthMm ?? 30,
    heightMm: 20,
    title: name,
    description: name,
    items: part.draw(part.sample),
  };
}

/** The faces in use, in the page itself so that it can be sent to somebody. */
function fontFaces(): string {
  const folder = dirname(
    createRequire(import.meta.url).resolve("@expo-google-fonts/ibm-plex-sans/package.json"),
  );
  const face = (file: string, look: string) => {
    const data = readFileSync(join(folder, file)).toString("base64");
    return `@font-face{font-family:"${fontFamily}";${look};src:url(data:font/ttf;base64,${data})}`;
  };
  return [
    face("400Regular/IBMPlexSans_400Regular.ttf", "font-weight:400"),
    face("600SemiBold/IBMPlexSans_600SemiBold.ttf", "font-weight:600"),
    face("400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf", "font-weight:400;font-style:italic"),
  ].join("");
}

const styles = `
body{font:16px/1.4 "IBM Plex Sans",sans-serif;margin:1rem;background:var(--drawing-paper);color:var(--drawing-ink)}
section{display:flex;flex-wrap:wrap;gap:1.5rem;align-items:flex-start}
figure{margin:0;max-width:100%}
figure.print{background:#fff}
svg{display:block;max-width:100%;height:auto;outline:0.3px dotted var(--drawing-faint)}
figcaption{font-size:.8rem;max-width:25rem;color:var(--drawing-soft)}
@media print{h2{break-before:page}figure{break-inside:avoid}}`;

function html(found: readonly Section[]): string {
  const body = found.map(({ title, theme, drawings }, i) => {
    const figures = drawings.map((drawing, j) => {
      const svg = drawingToSvg(drawing, { idPrefix: `d${i}-${j}`, theme });
      const caption = `<b>${drawing.title}.</b> ${drawing.description}`;
      return `<figure class="${theme}">${svg}<figcaption>${caption}</figcaption></figure>`;
    });
    return `<h2>${title}</h2>\n<section>\n${figures.join("\n")}\n</section>`;
  });
  const head = `<meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Gallery</title>`;
  return `<!doctype html><html lang="en"><head>${head}<style>${fontFaces()}${paletteCss()}${styles}</style></head><body>\n<h1>Every drawing of the guide</h1>\n${body.join("\n")}\n</body></html>\n`;
}

const { value } = await solveContent(disk, ["content"]);
if (!value) throw new Error("the guide's content has errors: run the check first");
mkdirSync("dist/gallery", { recursive: true });
writeFileSync("dist/gallery/index.html", html(sections(value)));
process.stdout.write("dist/gallery/index.html\n");
