// Sides of cards taken apart for others to set and draw: paragraphs with their places and widths, and marks as they are.

/** Room that a paragraph has beyond its longest line, in which another's rounding of widths breaks it as ours does [mm]. */
const spareMm = 0.3;

/** What a group of a drawing is to a reader, where its words belong together. */
const wholes = new Set(["P", "H1", "TH", "TD", "Figure"]);

/**
 * A side as others are given it. A paragraph has its words as runs of one face and size, which whoever sets it breaks into
 * lines; words of drawings are labels, a line each.
 */
export function partsOf({ widthMm, heightMm, items }, fonts) {
  const paragraphs = [];
  const marks = [];
  const labels = [];
  const alts = [];
  const visit = (some, xMm, yMm, role) => {
    const lines = some.filter(({ kind }) => kind === "text").map((line) => moved(line, xMm, yMm));
    if (lines.length > 0 && role !== undefined && role !== "Figure")
      paragraphs.push(paragraphOf(lines, role, fonts));
    else labels.push(...lines);
    for (const item of some) {
      if (item.kind === "group") {
        if (item.alt !== undefined) alts.push(item.alt);
        visit(item.items, xMm + item.xMm, yMm + item.yMm, wholes.has(item.role) ? item.role : role);
      } else if (item.kind !== "text") marks.push({ ...item, xMm, yMm });
    }
  };
  visit(items, 0, 0, undefined);
  return { widthMm, heightMm, paragraphs, marks, labels, alts };
}

const moved = (line, xMm, yMm) => ({ ...line, xMm: line.xMm + xMm, yMm: line.yMm + yMm });

function paragraphOf(lines, role, fonts) {
  const [first] = lines;
  const baselines = [...new Set(lines.map(({ yMm }) => yMm))];
  const ends = lines.map(({ xMm, text, sizeMm, face }) => xMm + fonts.measure(text, sizeMm, face));
  const runs = [];
  for (const { text, face } of lines) {
    if (runs.at(-1)?.face === face) runs.at(-1).text += text;
    else runs.push({ text, face });
  }
  return {
    role,
    runs,
    sizeMm: first.sizeMm,
    xMm: Math.min(...lines.map(({ xMm }) => xMm)),
    topMm: first.yMm - first.sizeMm,
    lineMm: baselines.length > 1 ? baselines[1] - baselines[0] : first.sizeMm * 1.1,
    widthMm: Math.max(...ends) - Math.min(...lines.map(({ xMm }) => xMm)) + spareMm,
  };
}

/** The marks of one side as the content of an SVG picture. */
export function svgOf(marks, greyOf) {
  const grey = (ink) =>
    `rgb(${Array(3)
      .fill(Math.round(255 * greyOf(ink)))
      .join(",")})`;
  return marks
    .map(({ xMm, yMm, kind, fill, stroke, ...shape }) => {
      const look = [
        `fill="${fill ? grey(fill) : "none"}"`,
        stroke ? `stroke="${grey(stroke.ink)}" stroke-width="${stroke.widthMm}"` : "",
        stroke?.dashMm ? `stroke-dasharray="${stroke.dashMm.join(" ")}"` : "",
        stroke?.cap === "round" ? 'stroke-linecap="round" stroke-linejoin="round"' : "",
        xMm || yMm ? `transform="translate(${fine(xMm)} ${fine(yMm)})"` : "",
      ].join(" ");
      if (kind === "circle")
        return `<circle cx="${fine(shape.cxMm)}" cy="${fine(shape.cyMm)}" r="${fine(shape.radiusMm)}" ${look}/>`;
      return `<path d="${pathOf(shape.steps)}" ${look}/>`;
    })
    .join("");
}

export const pathOf = (steps) =>
  steps.map(([letter, ...numbers]) => letter + numbers.map(fine).join(" ")).join("");

const fine = (value) => String(Math.round(value * 1e4) / 1e4);
