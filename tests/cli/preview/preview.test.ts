import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildSettings } from "../../../src/cli/build-settings.ts";
import { disk } from "../../../src/cli/disk.ts";
import { startPreview } from "../../../src/cli/preview/server.ts";
import { PreviewSession } from "../../../src/cli/preview/session.ts";
import { makeAnew } from "../../../src/model/kept.ts";
import { lessonFile } from "../../checks/checked.ts";
import { writeContent } from "../../support/cli.ts";
import { contentWith } from "../../support/smallest-content.ts";

let folder: string;
let preview: Awaited<ReturnType<typeof startPreview>>;
/** What is wrong with each new content, as the terminal hears of it. */
const heard: string[][] = [];
/** Events of the pages that are open, as they come. */
let events: AsyncGenerator<{ readonly name: string; readonly data: string }>;

beforeAll(async () => {
  folder = writeContent(mkdtempSync(join(tmpdir(), "dotdown-preview-")), contentWith());
  const session = new PreviewSession(disk, [folder], undefined, makeAnew, buildSettings);
  preview = await startPreview(session, [folder], 0, (errors) => heard.push(errors.map(({ code }) => code)));
});
afterAll(async () => {
  await preview.close();
  rmSync(folder, { recursive: true, force: true });
});

const get = async (path: string) => {
  const response = await fetch(new URL(path, preview.address));
  return { status: response.status, type: response.headers.get("content-type"), text: await response.text() };
};

/** Listens as the page that was made now does. */
async function* listen(): AsyncGenerator<{ readonly name: string; readonly data: string }> {
  const [, seen] = /client\.js\?([^"]+)/.exec((await get("/")).text)!;
  const { body } = await fetch(new URL(`/preview/events?${seen}`, preview.address));
  let text = "";
  for await (const chunk of body!) {
    text += new TextDecoder().decode(chunk);
    for (let end = text.indexOf("\n\n"); end >= 0; end = text.indexOf("\n\n")) {
      const [, name, data] = /event: (\w+)\ndata: (.*)/.exec(text.slice(0, end))!;
      text = text.slice(end + 2);
      yield { name: name!, data: JSON.parse(data!) };
    }
  }
}

const save = (path: string, text: string) => writeFileSync(join(folder, path), text);
const next = async () => (await events.next()).value as { name: string; data: string };

describe("a preview", () => {
  it("shows any page, with its style, scripts and data, as it is asked for", async () => {
    const home = await get("/");
    expect(home).toMatchObject({ status: 200, type: "text/html; charset=utf-8" });
    expect(home.text).toContain("<title>Test guide</title>");
    expect(home.text).toContain('<script src="/preview/client.js?');
    for (const path of ["/assets/site.css", "/assets/page.js", "/assets/search-index.js", "/data/plain.js"]) {
      expect((await get(path)).status, path).toBe(200);
    }
    expect((await get("/lessons/none.html")).status).toBe(404);
  });

  it("shows both sides of the card beside the page of a rig", async () => {
    const { text } = await get("/rigs/plain.html");
    const sides = [...text.matchAll(/<img src="(\/previews\/plain-\w+\.png)"/g)].map(([, path]) => path!);
    expect(sides).toHaveLength(2);
    for (const side of sides) expect((await get(side)).type).toBe("image/png");
    expect((await get("/cards/plain.pdf")).text).toMatch(/^%PDF-/);
  });

  it("tells open pages of a save, and shows what was saved", async () => {
    events = listen();
    const told = next();
    save("lessons/added.md", lessonFile(7, "Words that are new."));
    expect(await told).toMatchObject({ name: "fresh" });
    expect((await get("/lessons/added.html")).text).toContain("Words that are new.");
  });

  it("shows what is wrong over the page with its line and a caret, keeps the page, and clears it", async () => {
    const rig = readFileSync(join(folder, "rigs/plain.md"), "utf8");
    const told = next();
    save("rigs/plain.md", rig.replace("water: still", "water: stil"));
    const { name, data } = await told;
    expect(name).toBe("wrong");
    expect(data).toContain("rigs/plain.md:4:8");
    expect(data).toMatch(/\n {4}water: stil\n {11}\^\n/);
    expect((await get("/rigs/plain.html")).text).toContain("Plain rig");
    expect(heard.at(-1)).toHaveLength(1);
    const cleared = next();
    save("rigs/plain.md", rig.replace("Plain rig", "Plainer rig"));
    expect(await cleared).toMatchObject({ name: "fresh" });
    expect(heard.at(-1)).toEqual([]);
    expect((await get("/rigs/plain.html")).text).toContain("Plainer rig");
  });

  it("answers this machine alone, and no name that leads to it from elsewhere", async () => {
    expect(new URL(preview.address).hostname).toBe("127.0.0.1");
    const status = await new Promise((answered) =>
      request(preview.address, { headers: { host: "made-up.example" } }, ({ statusCode }) =>
        answered(statusCode),
      ).end(),
    );
    expect(status).toBe(403);
    expect((await get("/../package.json")).status).toBe(404);
    const broken = await get("/rigs/%E0%A4%A.html");
    expect(broken).toMatchObject({ status: 400, text: expect.stringContaining("this is no address") });
  });
});
