import type { z } from "zod";
import type { FinLooks, FishLooks } from "../../model/fish-looks.ts";
import type { fishLooksSchema } from "../schema/looks-schema.ts";

type Typed = z.output<typeof fishLooksSchema>;

/** What a fish looks like, from what is typed of it. */
export function fishLooks(typed: Typed): FishLooks {
  return {
    depthShare: typed.body.depth,
    deepestShare: typed.body.deepest,
    backShare: typed.body.back,
    tailRootShare: typed.body["tail-root"],
    headShare: typed.head.gill,
    mouth: typed.head.mouth,
    wideMouth: typed.head.wide,
    barbels: typed.head.barbels,
    backFins: typed["back-fins"].map(finLooks),
    ventFin: finLooks(typed["vent-fin"]),
    bellyFinShare: typed["belly-fin"],
    tail: { lengthShare: typed.tail.reach, forkShare: typed.tail.fork },
    scales: typed.scales,
    marks: typed.marks,
    redFins: typed["red-fins"],
    redEye: typed["red-eye"],
    tell: typed.tell,
  };
}

function finLooks({ from, to, height, edge }: Typed["vent-fin"]): FinLooks {
  return { fromShare: from, toShare: to, heightShare: height, edge };
}
