import { dataOf, partWithin } from "./page-parts.ts";

/** Ticked sizes as a text, such as `BB, 12 No 4, lead No 8`, in a field that the page's form sends. */
interface BoxForm {
  /** Puts a box in; an empty text is the guide's own. */
  write(text: string): void;
  /** Asks how many there are of these sizes, which a rig takes so many of, and of those that have a count. */
  askCounts(taken: ReadonlyMap<string, number>): void;
}

const nothing = "none";

/**
 * The box of ticks within a part of the page. Untouched it says nothing, and the guide's own shot are taken. Its field is
 * up to date before the form hears of a change.
 */
export function boxForm(part: HTMLElement): BoxForm {
  const field = partWithin<HTMLInputElement>(part, "[name=box]");
  const rows = [...part.querySelectorAll<HTMLElement>("[data-size]")].map((row) => ({
    row,
    size: dataOf(row, "size"),
    usual: dataOf(row, "metal"),
    tick: partWithin<HTMLInputElement>(row, "[type=checkbox]"),
    count: row.querySelector<HTMLInputElement>(".count"),
    metal: row.querySelector("select"),
  }));

  const show = () => {
    for (const { tick, metal } of rows) if (metal) metal.hidden = !tick.checked;
  };
  part.addEventListener("input", (event) => {
    if (event.target === field) return;
    const there = rows.filter(({ tick, count }) => tick.checked && count?.value.trim() !== "0");
    field.value =
      there
        .map(({ size, usual, count, metal }) =>
          [count?.value.trim(), metal && metal.value !== usual ? metal.value : "", size]
            .filter(Boolean)
            .join(" "),
        )
        .join(", ") || nothing;
    show();
  });
  show();

  return {
    write(text) {
      field.value = text;
      const terms = text.split(",").map((term) => term.trim());
      for (const { size, usual, tick, count, metal } of rows) {
        const term = terms.find((one) => one === size || one.endsWith(` ${size}`));
        const [, digits = "", named = ""] =
          /^(\d*) ?([a-z]*) ?$/.exec(term?.slice(0, -size.length) ?? "") ?? [];
        tick.checked = text === "" ? tick.defaultChecked : term !== undefined;
        if (count) count.value = digits;
        if (metal) metal.value = named || usual;
      }
      show();
    },
    askCounts(taken) {
      for (const { size, count } of rows) {
        if (!count) continue;
        const needed = taken.get(size);
        count.hidden = needed === undefined && count.value === "";
        count.placeholder =
          needed === undefined ? "" : dataOf(part, "takes").replace("{count}", String(needed));
      }
    },
  };
}
