import { expect, it } from "vitest";
import { buildOn } from "../support/another-machine.ts";

it("gives the same bytes in another folder, time zone, language, on another day and with other rights, PDFs included", async () => {
  const here = await buildOn({
    zone: "Pacific/Kiritimati",
    language: "tr_TR.UTF-8",
    clock: "1999-12-31T23:59:59Z",
    umask: 0o022,
    folder: "in",
    backwards: false,
  });
  const there = await buildOn({
    zone: "America/Los_Angeles",
    language: "de_DE.UTF-8",
    clock: "2038-02-01T12:00:00Z",
    umask: 0o077,
    folder: "Ordner ä/mit – Zeichen",
    backwards: true,
  });
  expect(Object.keys(here).filter((path) => path.endsWith(".pdf")).length).toBeGreaterThan(1);
  expect(there).toEqual(here);
});
