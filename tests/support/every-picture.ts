import type { Solved } from "../../src/build/stages.ts";
import { variantsOf } from "../../src/core/float/moved-float.ts";
import { first } from "../../src/core/lists.ts";
import { filmsOf } from "../../src/model/films.ts";
import { type PictureReference, scenes, stateGroups } from "../../src/model/pictures.ts";

type Kind = PictureReference["picture"];

/** Floats that stand beside each other in one picture of a text, at the most. */
const floatsAbreast = 6;

/**
 * Every picture that texts can ask for of a guide, by what it shows; a kind without its line here does not compile.
 * Rigs are drawn at all their depths, what else shows one at the first.
 */
export function everyPicture({
  library,
  rigs,
  source,
}: Pick<Solved, "library" | "rigs" | "source">): Readonly<Record<Kind, readonly PictureReference[]>> {
  const atFirst = rigs.map((solved) => ({ solved, rig: solved.rig.id, depth: first(solved.depths) }));
  const floats = library.floats.map(({ id }) => id);
  return {
    "rig-drawing": rigs.flatMap(({ rig, depths }) =>
      depths.flatMap((depth) =>
        variantsOf(depth, rig.water).map((variant) => ({
          picture: "rig-drawing" as const,
          rig: rig.id,
          depthMm: depth.depthMm,
          variant,
        })),
      ),
    ),
    "float-drawing": floats.map((float) => ({ picture: "float-drawing", float })),
    "float-chart": Array.from({ length: Math.ceil(floats.length / floatsAbreast) }, (_, i) => ({
      picture: "float-chart",
      floats: floats.slice(i * floatsAbreast, (i + 1) * floatsAbreast),
    })),
    "float-states": atFirst.flatMap(({ rig }) =>
      stateGroups.map((show) => ({ picture: "float-states" as const, rig, show })),
    ),
    "pattern-chart": atFirst.map(({ rig, depth: { depthMm } }) => ({
      picture: "pattern-chart",
      rigs: [rig],
      depthMm,
    })),
    "hang-plot": atFirst.flatMap(({ solved, rig, depth: { depthMm } }) =>
      solved.rig.water === "flowing" ? [{ picture: "hang-plot" as const, rig, depthMm }] : [],
    ),
    film: [
      ...atFirst.flatMap(({ solved, rig, depth }) =>
        filmsOf(solved, depth).map((film) => ({
          picture: "film" as const,
          film,
          rig,
          depthMm: depth.depthMm,
        })),
      ),
      ...library.knots.map(({ id }) => ({ picture: "film" as const, film: "knot" as const, knot: id })),
    ],
    bed: library.swims.flatMap(({ id, lines }) =>
      lines.map((_, line) => ({ picture: "bed" as const, swim: id, line })),
    ),
    "swim-days": library.swims.flatMap(({ id }) => {
      const notes = library.notes.filter(({ swim }) => swim === id);
      return [
        ...(notes.some(({ depths }) => depths.length > 0) ? (["depth"] as const) : []),
        ...(notes.some(({ paceMs }) => paceMs !== undefined) ? (["pace"] as const) : []),
      ].map((of) => ({ picture: "swim-days" as const, swim: id, of }));
    }),
    "spot-rig": (source.spots ?? []).map(({ swim, spot }) => ({
      picture: "spot-rig",
      swim: swim.id,
      spot: spot.title,
    })),
    knot: library.knots.map(({ id }) => ({ picture: "knot", knot: id })),
    fish: library.species.flatMap(({ id, looks }) => (looks ? [{ picture: "fish" as const, fish: id }] : [])),
    bait: library.baits.flatMap(({ bait, looks }) =>
      looks ? [{ picture: "bait" as const, bait: bait.id }] : [],
    ),
    scene: scenes.map((scene) => ({ picture: "scene", scene })),
    image: [...source.images.keys()].map((image) => ({ picture: "image", image, alt: image })),
  };
}
