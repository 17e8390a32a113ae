// The same cards by general-purpose tools: each sets the paragraphs, breaks their lines itself, draws the marks and tags what
// is read, as far as it can.
import { PassThrough } from "node:stream";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import chromium from "@sparticuz/chromium";
import PDFDocument from "pdfkit";
import { chromium as engine } from "playwright-core";
import { pathOf, svgOf } from "./card-parts.mjs";

const ptPerMm = 72 / 25.4;

/** The typesetter: marks as one picture a side, words as placed boxes; a document of the standard of our own. */
export function byTypesetter(sides, { faces, greyOf }) {
  const compiler = NodeCompiler.create({
    workspace: process.cwd(),
    fontArgs: [{ fontBlobs: Object.values(faces).map((bytes) => Buffer.from(bytes)) }],
  });
  const head = [
    '#set document(title: "Cards", author: "Club")',
    '#set text(font: "IBM Plex Sans", lang: "en", top-edge: 0.8em, bottom-edge: -0.2em, hyphenate: false)',
    "#set par(justify: false, spacing: 0pt)",
  ];
  const markup = [...head, ...sides.map((side) => typesetSide(side, greyOf))].join("\n");
  /** Another document each time, as what it has set it remembers. */
  return (round) => {
    const mainFileContent = `${markup}\n#page[#text[${round}]]`;
    const bytes = compiler.pdf(
      { mainFileContent },
      { pdfStandard: "ua-1", creationTimestamp: 1_780_000_000 },
    );
    compiler.evictCache(0);
    return bytes;
  };
}

function typesetSide({ widthMm, heightMm, paragraphs, marks, labels, alts }, greyOf) {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthMm} ${heightMm}">${svgOf(marks, greyOf)}</svg>`;
  const alt = JSON.stringify(alts.join(" ") || "marks");
  const picture = `#place(image(bytes(${JSON.stringify(svg)}), format: "svg", width: 100%, height: 100%, alt: ${alt}))`;
  const set = ({ runs, role, sizeMm, xMm, topMm, lineMm, widthMm: wideMm }) => {
    const words = runs.map(({ text, face }) => {
      const shown = `#${JSON.stringify(text)}`;
      return face === "bold" ? `#text(weight: "semibold")[${shown}]` : shown;
    });
    const inside = `#set text(size: ${sizeMm}mm)\n#set par(leading: ${(lineMm - sizeMm).toFixed(3)}mm)\n${words.join("")}`;
    const tagged = role === "H1" ? `#heading[${words.join("")}]` : inside;
    const head = role === "H1" ? `#show heading: set text(size: ${sizeMm}mm, weight: "semibold")\n` : "";
    return `#place(dx: ${xMm.toFixed(3)}mm, dy: ${(topMm + 0.2 * sizeMm).toFixed(3)}mm, block(width: ${wideMm.toFixed(3)}mm)[${head}${tagged}])`;
  };
  const label = ({ text, sizeMm, face, xMm, yMm, anchor }) => {
    const at = { start: "left", middle: "center", end: "right" }[anchor];
    const room = { start: 0, middle: 50, end: 100 }[anchor];
    const weight = face === "bold" ? ', weight: "semibold"' : "";
    return `#place(dx: ${(xMm - room).toFixed(3)}mm, dy: ${(yMm - 0.8 * sizeMm).toFixed(3)}mm, box(width: 100mm, align(${at})[#text(size: ${sizeMm}mm${weight})[#${JSON.stringify(text)}]]))`;
  };
  return `#page(width: ${widthMm}mm, height: ${heightMm}mm, margin: 0pt)[${[picture, ...paragraphs.map(set), ...labels.map(label)].join("\n")}]`;
}

/** The PDF library: it breaks lines, knows nothing of boxes, and tags what it is told to. */
export function byPdfkit(sides, { faces, greyOf }) {
  return () =>
    new Promise((done) => {
      const document = new PDFDocument({
        autoFirstPage: false,
        tagged: true,
        subset: "PDF/UA",
        pdfVersion: "1.7",
        lang: "en",
        displayTitle: true,
        info: { Title: "Cards", Author: "Club" },
      });
      for (const [name, bytes] of Object.entries(faces)) document.registerFont(name, Buffer.from(bytes));
      let length = 0;
      const sink = new PassThrough();
      sink.on("data", (piece) => {
        length += piece.length;
      });
      sink.on("end", () => done({ length }));
      document.pipe(sink);
      for (const side of sides) pdfkitSide(document, side, greyOf);
      document.end();
    });
}

function pdfkitSide(document, { widthMm, heightMm, paragraphs, marks, labels, alts }, greyOf) {
  document.addPage({ size: [widthMm * ptPerMm, heightMm * ptPerMm], margin: 0 });
  const grey = (ink) => Array(3).fill(Math.round(255 * greyOf(ink)));
  const draw = () => {
    document.save().scale(ptPerMm);
    for (const { kind, xMm, yMm, fill, stroke, ...shape } of marks) {
      document.save().translate(xMm, yMm);
      if (kind === "circle") document.circle(shape.cxMm, shape.cyMm, shape.radiusMm);
      else document.path(pathOf(shape.steps));
      if (stroke) document.lineWidth(stroke.widthMm).lineCap(stroke.cap ?? "butt");
      if (stroke?.dashMm) document.dash(stroke.dashMm[0], { space: stroke.dashMm[1] ?? stroke.dashMm[0] });
      if (fill && stroke) document.fillAndStroke(grey(fill), grey(stroke.ink));
      else if (fill) document.fill(grey(fill));
      else document.stroke(grey(stroke.ink));
      document.restore();
    }
    document.restore();
    for (const { text, face, sizeMm, xMm, yMm, anchor } of labels) {
      document
        .font(face)
        .fontSize(sizeMm * ptPerMm)
        .fillColor("black");
      const before = { start: 0, middle: 0.5, end: 1 }[anchor] * document.widthOfString(text);
      document.text(text, xMm * ptPerMm - before, yMm * ptPerMm, {
        lineBreak: false,
        baseline: "alphabetic",
      });
    }
  };
  const section = document.struct("Sect", [
    document.struct("Figure", { alt: alts.join(" ") || "marks" }, draw),
    ...paragraphs.map((one) =>
      document.struct(one.role === "H1" ? "H1" : "P", () => pdfkitText(document, one)),
    ),
  ]);
  document.addStructure(section);
  section.end();
}

function pdfkitText(document, { runs, sizeMm, xMm, topMm, lineMm, widthMm }) {
  document.fillColor("black").fontSize(sizeMm * ptPerMm);
  runs.forEach(({ text, face }, i) => {
    document.font(face);
    const options = {
      width: widthMm * ptPerMm,
      lineGap: lineMm * ptPerMm - document.currentLineHeight(),
      continued: i < runs.length - 1,
    };
    if (i === 0) document.text(text, xMm * ptPerMm, topMm * ptPerMm, options);
    else document.text(text, options);
  });
}

/** Printing one page of HTML with a headless browser that has been started. */
export async function byBrowser(sides, { faces, greyOf }) {
  const executablePath = await chromium.executablePath();
  const [{ widthMm, heightMm }] = sides;
  const face = (name, weight) =>
    `@font-face{font-family:Card;font-weight:${weight};src:url(data:font/ttf;base64,${Buffer.from(faces[name]).toString("base64")})}`;
  const styles = `${face("regular", 400)}${face("bold", 600)}@page{margin:0}body{margin:0;font-family:Card}
section{position:relative;overflow:hidden;break-after:page}p,h1,svg{position:absolute;margin:0;white-space:pre-wrap;font-weight:400}`;
  const named = [...new Set(sides.map(sizeOf))];
  const pages = named.map((size, i) => `@page s${i}{size:${size}}.s${i}{page:s${i};}`).join("");
  const body = sides.map((side) => htmlSide(side, `s${named.indexOf(sizeOf(side))}`, greyOf)).join("");
  const html = `<!doctype html><html lang="en"><title>Cards</title><style>${styles}${pages}</style>${body}</html>`;
  const args = [
    "--headless=shell",
    "--no-sandbox",
    "--no-zygote",
    "--disable-gpu",
    "--font-render-hinting=none",
  ];
  const browser = await engine.launch({ executablePath, args });
  const print = async () => {
    const page = await browser.newPage();
    page.setDefaultTimeout(0);
    await page.setContent(html);
    const bytes = await page.pdf({
      width: `${widthMm}mm`,
      height: `${heightMm}mm`,
      preferCSSPageSize: true,
      tagged: true,
      printBackground: true,
    });
    await page.close();
    return bytes;
  };
  return { print, close: () => browser.close() };
}

const sizeOf = ({ widthMm, heightMm }) => `${widthMm}mm ${heightMm}mm`;

const escaped = (text) => text.replace(/&/g, "&amp;").replace(/</g, "&lt;");

function htmlSide({ widthMm, heightMm, paragraphs, marks, labels, alts }, page, greyOf) {
  const box = (mm) => `${mm.toFixed(3)}mm`;
  const svg = `<svg role="img" aria-label="${escaped(alts.join(" ")).replace(/"/g, "&quot;")}" viewBox="0 0 ${widthMm} ${heightMm}" style="width:${widthMm}mm;height:${heightMm}mm">${svgOf(marks, greyOf)}${labels
    .map(
      ({ text, face, sizeMm, xMm, yMm, anchor }) =>
        `<text x="${xMm.toFixed(3)}" y="${yMm.toFixed(3)}" font-size="${sizeMm}" font-weight="${face === "bold" ? 600 : 400}" text-anchor="${anchor}">${escaped(text)}</text>`,
    )
    .join("")}</svg>`;
  const words = paragraphs.map(({ role, runs, sizeMm, xMm, topMm, lineMm, widthMm: wide }) => {
    const tag = role === "H1" ? "h1" : "p";
    const inside = runs.map(({ text, face }) =>
      face === "bold" ? `<b style="font-weight:600">${escaped(text)}</b>` : escaped(text),
    );
    const style = `left:${box(xMm)};top:${box(topMm)};width:${box(wide)};font-size:${box(sizeMm)};line-height:${box(lineMm)}`;
    return `<${tag} style="${style}">${inside.join("")}</${tag}>`;
  });
  return `<section class="${page}" style="width:${widthMm}mm;height:${heightMm}mm">${svg}${words.join("")}</section>`;
}
