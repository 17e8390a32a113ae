import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linkSchemes, parseLink } from "../../src/model/links.ts";

const from = "content/lessons/first.md";

describe("a link", () => {
  it.each([
    ["https://example.org/a b?c#d", "https://example.org/a%20b?c#d"],
    ["HTTP://EXAMPLE.org", "http://example.org/"],
    ["mailto:club@example.org", "mailto:club@example.org"],
    ["https://exämple.org/ü", "https://xn--exmple-cua.org/%C3%BC"],
  ])("%s leads out of the guide", (url, address) => {
    expect(parseLink(url, from)).toEqual({ kind: "outside", address });
  });

  it.each([
    ["second.md", "site/lessons/second.html", undefined],
    ["../rigs/stick.html#notes-a", "site/rigs/stick.html", "notes-a"],
    ["../safety.html", "site/safety.html", undefined],
    ["../pages/safety.md", "site/safety.html", undefined],
    ["../floats/stick.yaml", "site/floats.html", "stick"],
    ["../species/roach.yaml", "site/fish.html", "roach"],
    ["#a part", "site/lessons/first.html", "a part"],
    ["second.md#", "site/lessons/second.html", undefined],
    ["../rigs/fl%C3%BCgel.md", "site/rigs/flügel.html", undefined],
  ])("%s leads to a page of the guide", (url, page, anchor) => {
    expect(parseLink(url, from)).toEqual({ kind: "page", page, ...(anchor !== undefined && { anchor }) });
  });

  it("leads to the same page whether its letters are composed or not", () => {
    expect(parseLink("u\u0308ber.md", from)).toEqual(parseLink("\u00fcber.md", from));
    expect(parseLink("u%CC%88ber.md", from)).toMatchObject({ page: "site/lessons/über.html" });
  });

  it.each([
    "javascript:alert(1)",
    "JaVaScRiPt:alert(1)",
    "data:text/html,x",
    "vbscript:x",
    "file:///x",
    "ftp://x.org/",
  ])("%s is not followed", (url) => {
    expect(parseLink(url, from)).toEqual({ kind: "scheme", scheme: url.split(":")[0]!.toLowerCase() });
  });

  it.each(["http://", "https://a b/", "http://[", "http://x:99999/", "https://%/", "mailto:", "http://a]b/"])(
    "%s is no address",
    (url) => {
      expect(parseLink(url, from)).toEqual({ kind: "no address" });
    },
  );

  it.each([
    "../constructor/x.md",
    "../__proto__/x.md",
    "../toString/x.md",
    "java\nscript:alert(1)",
    " javascript:alert(1)",
    "//example.org/x.html",
    "\\\\example.org\\x.html",
    "second.md?x",
    "a/../../../x/y.md",
    "%E0%A4%A",
  ])("%j leads to no page", (url) => {
    expect(parseLink(url, from).kind).toBe("no page");
  });

  it.each(["", " "])("of nothing has no address: %j", (url) => {
    expect(parseLink(url, "content/species.yaml")).toEqual({ kind: "no address" });
  });

  it("of any signs at all is read without a throw, and leads out by an allowed scheme only", () => {
    const piece = fc.constantFrom(
      "..",
      "/",
      "#",
      "?",
      "%",
      ":",
      "\\",
      "http",
      "//",
      "__proto__",
      ".md",
      "[",
      "\0",
      "\u202e",
    );
    // The library's own string of any signs makes a table of all of them first.
    const sign = fc.oneof(fc.integer({ max: 0xd7ff, min: 0 }), fc.integer({ max: 0x10ffff, min: 0xe000 }));
    const url = fc.oneof(
      fc.array(sign).map((codes) => String.fromCodePoint(...codes)),
      fc.webUrl(),
      fc.array(piece).map((pieces) => pieces.join("")),
    );
    fc.assert(
      fc.property(url, fc.string(), (any, path) => {
        const link = parseLink(any, path);
        if (link.kind === "outside")
          expect(linkSchemes.map((scheme) => `${scheme}:`)).toContain(new URL(link.address).protocol);
        if (link.kind === "page") expect(link.page).toMatch(/^site\/(?:\w+\/)?[\p{L}\p{M}\p{N}_-]+\.html$/u);
      }),
      { seed: 14, numRuns: 800 },
    );
  });
});
