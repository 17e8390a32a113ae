import { drawPictures } from "../drawing/pictures.ts";
import type { OutputFile } from "../markup/output.ts";
import type { Printable } from "../model/printable.ts";
import { cardScript } from "../print/card-faces.ts";
import { siteFile } from "../site/site-files.tsx";
import { withPlace } from "./no-room.ts";
import { printedFiles } from "./printed-files.ts";
import { siteInput } from "./site-input.ts";
import type { BuildSettings, Solved } from "./stages.ts";

/**
 * One file of the site, made without the others: pages lead to scripts and styles by their plain names, and know of cards
 * alone among what is printed.
 *
 * @param path below the output folder
 * @throws ContentError where it does not fit its paper, or a drawing on it its room
 */
export async function oneFile(
  solved: Solved,
  path: string,
  settings: BuildSettings,
): Promise<OutputFile | undefined> {
  try {
    return await made(solved, path, settings);
  } catch (error) {
    throw withPlace(error, solved);
  }
}

async function made(solved: Solved, path: string, settings: BuildSettings): Promise<OutputFile | undefined> {
  const drawings = drawPictures(solved.source);
  if (!/^site\/(?:cards|previews|handouts)\//.test(path)) {
    return siteFile(path, siteInput(solved, drawings, cardsOf(solved), assetsFor(path, settings)));
  }
  for await (const file of printedFiles(neededFor(path, solved), drawings, {
    ...settings,
    shownSides: ["front", "back"],
  })) {
    if (file.path === path) return file;
  }
  return undefined;
}

/** Without the script that has the faces of cards put in front of it, where another file is asked for. */
function assetsFor(path: string, settings: BuildSettings): BuildSettings {
  if (path.endsWith(`/${cardScript}`)) return settings;
  return {
    ...settings,
    siteAssets: new Map([...settings.siteAssets].filter(([name]) => name !== cardScript)),
  };
}

function cardsOf({ rigs }: Solved): readonly Printable[] {
  return rigs.map(({ rig: { id, title } }) => ({
    kind: "card",
    rigId: id,
    title,
    path: `site/cards/${id}.pdf`,
    sizeBytes: 0,
    hash: "",
  }));
}

/** The guide with nothing but what a printed file is made from; whole where several have part in it. */
function neededFor(path: string, solved: Solved): Solved {
  const name = path.replace(/^.*\//, "");
  const { library, rigs } = solved;
  const isOf = (id: string) => name.startsWith(`${id}-`) || name.startsWith(`${id}.`);
  const none = { ...library, lessons: [], pages: [], plans: [] };
  if (/^site\/(?:cards|previews)\//.test(path)) {
    const rig = rigs.filter((one) => isOf(one.rig.id));
    return rig.length > 0 ? { ...solved, swims: [], rigs: rig, library: none } : solved;
  }
  const lessons = library.lessons.filter(({ id }) => isOf(id));
  const pages = library.pages.filter(({ id }) => isOf(`page-${id}`));
  const plans = library.plans.filter(({ id }) => isOf(`plan-${id}`));
  const swims = solved.swims.filter(({ swim }) => isOf(`swim-${swim.id}`));
  const isOne = lessons.length + pages.length + plans.length + swims.length > 0;
  return isOne ? { ...solved, rigs: [], swims, library: { ...library, lessons, pages, plans } } : solved;
}
