import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { readFileSync } from "node:fs";
const doc = await getDocument({ data: new Uint8Array(readFileSync(process.argv[2])), verbosity: 0 }).promise;
for (let i = 1; i <= doc.numPages; i++) {
  const { items } = await (await doc.getPage(i)).getTextContent();
  console.log("== page", i, (await doc.getPage(i)).view.join(" "));
  let y; let line = "";
  for (const it of items) { if (y !== undefined && Math.abs(it.transform[5] - y) > 1) { console.log(Math.round(y), line); line = ""; } y = it.transform[5]; line += it.str; }
  console.log(line);
}
