import { expect, it } from "vitest";
import { buildOn } from "../support/another-machine.ts";
import { seeded } from "../support/seeded.ts";

const zones = [
  "UTC",
  "Africa/Monrovia",
  "America/Anchorage",
  "America/St_Johns",
  "Antarctica/Troll",
  "Asia/Kathmandu",
  "Asia/Tehran",
  "Australia/Lord_Howe",
  "Europe/Dublin",
  "Pacific/Chatham",
];
const languages = [
  "C",
  "C.UTF-8",
  "ar_EG.UTF-8",
  "de_CH.UTF-8",
  "en_GB.UTF-8",
  "fa_IR",
  "hi_IN",
  "ja_JP",
  "th_TH",
  "tr_TR",
];
const clocks = [
  "1970-01-01T00:00:01Z",
  "1996-02-29T12:00:00Z",
  "2026-03-29T01:30:00Z",
  "2026-12-31T23:59:59Z",
  "2100-02-28T23:00:00Z",
];
const umasks = [0o000, 0o022, 0o027, 0o077];
const folders = ["in", "a b", "ünterlagen", "X".repeat(80), "deep/er/and/deeper", "100 % & more", "日本語"];

it("gives the same bytes on twenty machines of other zones, languages, clocks, rights, folders and orders of files", async () => {
  const draws = seeded(20);
  const of = <T>(values: readonly T[]) => values[Math.floor(draws.next().value * values.length)]!;
  const machines = Array.from({ length: 20 }, (_, at) => ({
    zone: zones[at % zones.length]!,
    language: languages[(at * 3) % languages.length]!,
    clock: of(clocks),
    umask: of(umasks),
    folder: of(folders),
    backwards: at % 2 === 1,
  }));
  const [first, ...others] = machines;
  const here = await buildOn(first!);
  for (const machine of others) expect(await buildOn(machine), JSON.stringify(machine)).toEqual(here);
});
