import { expect, test } from "vitest";
import { rigData } from "../../src/build/data.ts";
import { cardFormatsOn } from "../../src/print/cards/card-formats.ts";
import { realSite } from "../site/real-site.ts";
import { cardStatements } from "../support/tellers/card-statements.ts";
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
}, 300_000);
