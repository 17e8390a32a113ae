import { expect, test } from "vitest";
import { rigData } from "../../src/build/data.ts";
import { cardFormatsOn } from "../../src/print/cards/card-formats.ts";
import { realSite } from "../site/real-site.ts";
import { cardStatements } from "../support/tellers/card-statements.ts";
import { drawingStatements, rooms } from "../support/tellers/drawing-statements.ts";
import { agrees } from "../support/tellers/statement.ts";

test("every rig's printed card of every format tells what its data say", async () => {
  const site = await realSite();
  const wrong: string[] = [];
  let held = 0;
  for (const solved of site.solved.values()) {
    const rig = rigData(solved);
    for (const format of cardFormatsOn.A4) {
      const told = await cardStatements(solved, format, site);
      held += told.length;
      wrong.push(
        ...told.filter((one) => !agrees(rig, one)).map((one) => `${rig.id}: ${JSON.stringify(one)}`),
      );
    }
  }
  expect(wrong).toEqual([]);
  expect(held).toBeGreaterThan(1100);
});

test("every rig's drawings tell what its data say, at every depth in every room", async () => {
  const site = await realSite();
  let held = 0;
  const wrong = [...site.solved.values()].flatMap((solved) => {
    const rig = rigData(solved);
    const told = solved.depths.flatMap((depth) =>
      rooms.flatMap((room) => drawingStatements(solved, depth, room, site.kit)),
    );
    held += told.length;
    return told.filter((one) => !agrees(rig, one)).map((one) => `${rig.id}: ${JSON.stringify(one)}`);
  });
  expect(wrong).toEqual([]);
  expect(held).toBeGreaterThan(1500);
});
