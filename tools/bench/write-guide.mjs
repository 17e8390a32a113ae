// A guide of any size for the bench: the shipped one, with its rigs for ever other depths and its lessons under other titles.
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const shipped = join(import.meta.dirname, "../../content");

/** Numbers from 0 to 1 by a linear congruential generator (Park and Miller 1988: 16807, 2³¹ − 1). */
function seeded(seed) {
  let state = seed;
  return () => {
    state = (state * 16_807) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/**
 * Writes a guide with so many rigs and lessons, the shipped ones among them; the same seed gives the same bytes.
 *
 * @param {string} folder
 * @param {{ rigs: number, lessons: number, seed: number }} size
 */
export function writeGuide(folder, { rigs, lessons, seed }) {
  cpSync(shipped, folder, { recursive: true });
  const share = seeded(seed);
  const more = (kind, count, change) => {
    const names = readdirSync(join(shipped, kind)).filter((name) => name.endsWith(".md"));
    const texts = names.map((name) => readFileSync(join(shipped, kind, name), "utf8"));
    mkdirSync(join(folder, kind), { recursive: true });
    for (let number = texts.length + 1; number <= count; number++) {
      writeFileSync(join(folder, kind, `more-${number}.md`), change(texts[number % texts.length], number));
    }
  };
  more("rigs", rigs, (text, number) => {
    const deeper = 0.01 * Math.floor(1 + 19 * share());
    return text
      .replace(/^title: (.*)$/m, (_, title) => `title: ${title} ${number}`)
      .replace(/^depths: .*$/m, (depths) =>
        depths.replace(/[\d.]+(?= m)/g, (metres) => (Number(metres) + deeper).toFixed(2)),
      );
  });
  more("lessons", lessons, (text, number) =>
    text
      .replace(/^title: (.*)$/m, (_, title) => `title: ${title} ${number}`)
      .replace(/^order: .*$/m, `order: ${1000 + number}`),
  );
}

/** Changes the strength of a rig's line, or one word of a lesson. */
export const edits = {
  "one rig": (folder) => edit(join(folder, "rigs/margin.md"), /strength: 10 lb/, "strength: 9 lb"),
  "one word": (folder) => edit(join(folder, "lessons/casting.md"), /\bthe\b(?=[^:]*$)/, "that"),
};

function edit(file, from, to) {
  const text = readFileSync(file, "utf8");
  const changed = text.replace(from, to);
  if (changed === text) throw new Error(`${file} has nothing to change`);
  writeFileSync(file, changed);
}
