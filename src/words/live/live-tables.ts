import { groundbait } from "../../core/feed/groundbait.ts";
import { terminalFallMs } from "../../core/sink/body-fall.ts";
import { ballDown, feedTable } from "../../solve/feed-in-water.ts";
import { courseTable } from "../course-table.ts";
import { groupKitTable, kitTable } from "../kit-tables.ts";
import { depthGuideTable, hookTable, lineTable, shotTable, type TextTable, whipTable } from "../tables.ts";
import { ballTable, feedPlaceTable, groundbaitTable, holdBackTable, liftTable } from "../water-tables.ts";
import {
  type Attributes,
  answered,
  depthOf,
  inWaterOf,
  type LiveContext,
  list,
  mustFlow,
  named,
  quantities,
  quantity,
  rigOf,
  unknown,
  Wrong,
} from "./references.ts";

/** Directives on a line of their own that become tables. */
export const tables: Readonly<Record<string, (at: Attributes, context: LiveContext) => TextTable>> = {
  "shot-table": (at, context) => shotTable(rigOf(at, context), context),
  "depth-guide": (at, context) => depthGuideTable(depthOf(at, context), context),
  "lift-and-pull": (at, context) => {
    const { lift } = inWaterOf(at, context);
    if (lift.length < 2) throw unknown("rig whose shot can be gathered or spread", at("rig"), []);
    return liftTable(lift, context, false);
  },
  "hold-back": (at, context) => {
    mustFlow(rigOf(at, context).rig, context);
    return holdBackTable(inWaterOf(at, context).holdBackMax, context);
  },
  "feed-places": (at, context) => {
    const bait = named(
      context.library.baits.map(({ bait }) => bait),
      at("bait"),
      "bait",
    );
    const fall = terminalFallMs(bait, context.library.guide.conditions);
    const feed = fall.ok
      ? feedTable(fall.value, quantities(at, "pace", "paces"), quantities(at, "length", "depths"))
      : fall;
    if (!feed.ok) throw unknown("bait that sinks", at("bait"), []);
    return feedPlaceTable(feed.value, context);
  },
  "groundbait-fall": (at, context) => {
    const paces = quantities(at, "pace", "paces");
    const balls = quantities(at, "length", "depths").map((depthMm) => {
      const ball = ballDown(depthMm, paces, context.library.guide.conditions);
      if (!ball.ok) throw unknown("depth", at("depths"), []);
      return { depthMm, ball: ball.value };
    });
    return ballTable(balls, context);
  },
  "groundbait-mix": (at, context) => {
    const ballMm = quantity(at, "length", "size");
    const mixes = list(at, "balls").map((count) => groundbait(Number(count), ballMm));
    return {
      ...groundbaitTable(mixes.map(answered), ballMm, context),
      findings: mixes.flatMap(({ findings }) => findings),
    };
  },
  "whip-line": (at, context) => {
    const solved = rigOf(at, context);
    if (solved.rig.outfit === "whip") return whipTable(solved, context);
    const whips = [...context.solved.values()].filter(({ rig }) => rig.outfit === "whip");
    throw unknown(
      "rig for a whip",
      solved.rig.id,
      whips.map(({ rig }) => rig.id),
    );
  },
  contacts: (_, { library, words }) => ({
    head: [words("table.when"), words("table.who"), words("table.number")],
    rows: [
      ...library.guide.contacts.map(({ when, who, number }) => [
        when,
        who,
        number ?? words("table.number-to-write"),
      ]),
      ...(["club-number", "access-point"] as const).map((line) => [
        words(`table.${line}`),
        words(`table.${line}-who`),
        library.guide[line === "club-number" ? "clubNumber" : "accessPoint"] ??
          words("table.number-to-write"),
      ]),
    ],
  }),
  "hook-for-bait": (_, context) => hookTable(context.library.baits, context),
  kit: (at, context) => kitTable(named(context.library.kits, at("kit"), "kit"), context),
  "group-kit": (at, context) => {
    const kits = context.library.kits.flatMap((kit) => (kit.group ? [{ ...kit, group: kit.group }] : []));
    const kit = named(kits, at("kit"), "kit with a group");
    const rigs = kit.rigIds.flatMap((id) => context.solved.get(id) ?? []);
    return answered(groupKitTable({ kit, use: kit.group, rigs }, Number(at("learners")), context));
  },
  "course-plan": (at, context) => {
    const { plans } = context.library;
    const side = at("after", "none") === "none" ? "to" : "after";
    const part = { goal: named(plans, at(side), "lesson with a plan"), side } as const;
    const roomS = quantity(at, "time", "evening") - quantity(at, "time", "idle");
    if (roomS <= 0) {
      throw new Wrong("out-of-range", { key: "idle", found: at("idle"), bound: "as long as the evening" });
    }
    return courseTable(plans, part, roomS / 60, context);
  },
  "line-for-fish": (_, context) => {
    const { lines } = context.library;
    if (!lines) throw unknown("table of line", "lines.yaml", []);
    return lineTable(lines, context);
  },
  "shot-sizes": (_, { library, words, figures }) => {
    const scale = named(library.scales, library.guide.scaleId, "shot scale");
    return {
      head: [words("table.size"), words("table.mass")],
      rows: scale.sizes.map(({ name, massG }) => [name, figures.statedMass(massG)]),
    };
  },
};
