/** The first tap into a field takes what it holds, so that typing writes another figure instead of adding to it. */
export function selectOnTap(field: HTMLInputElement): void {
  let entered = false;
  field.addEventListener("focus", () => {
    entered = true;
  });
  field.addEventListener("click", () => {
    if (entered) field.select();
    entered = false;
  });
}
