import { encode } from "uqr";
import type { Item, PathStep } from "../../drawing/model.ts";

/** Clear modules all round. Source: ISO/IEC 18004, QR code. */
const quietModules = 4;

/** A QR code as squares to be drawn at any size. */
interface QrCode {
  /** Modules across, the quiet zone included. */
  readonly modules: number;
  draw(widthMm: number): readonly Item[];
}

/** A QR code of a text with the low level of correction, which gives the largest modules in the room there is. */
export function qrCode(text: string): QrCode {
  const { data, size } = encode(text, { ecc: "L", border: 0 });
  const modules = size + 2 * quietModules;
  return {
    modules,
    draw: (widthMm) => {
      const side = widthMm / modules;
      const steps: PathStep[] = [];
      data.forEach((row, y) => {
        for (let x = 0; x < size; x++) {
          if (!row[x]) continue;
          const from = x;
          while (row[x + 1]) x++;
          steps.push(...block(from, x + 1, y).map(scaled(side)));
        }
      });
      return [{ kind: "path", steps, fill: "ink" }];
    },
  };
}

function block(from: number, to: number, row: number): PathStep[] {
  return [["M", from, row], ["L", to, row], ["L", to, row + 1], ["L", from, row + 1], ["Z"]];
}

function scaled(side: number): (step: PathStep) => PathStep {
  const at = (modules: number) => (quietModules + modules) * side;
  return (step) => (step[0] === "M" || step[0] === "L" ? [step[0], at(step[1]), at(step[2])] : step);
}
