import { expect, test } from "vitest";
import { guideSchema } from "../../../src/content/schema/guide-schema.ts";

const said = (address: string) =>
  guideSchema.shape["site-address"].safeParse(address).error?.issues.map(({ message }) => message) ?? [];

test("the address of a site is that of a folder, whose name may have points", () => {
  expect(said("https://example.org/our.guide/index.html")).toEqual([
    "this is the address of a file; write that of the folder: https://example.org/our.guide/",
  ]);
  for (const folder of ["https://example.org", "https://example.org/our.guide", "https://example.org/a/"])
    expect(said(folder), folder).toEqual([]);
});
