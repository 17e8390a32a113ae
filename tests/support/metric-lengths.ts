/** Lengths and volumes told in metric units in what a reader sees or hears of a page. */
export function metricLengths(html: string): string[] {
  const seen = html
    .replace(/<(script|style)[\s\S]*?<\/\1>/g, " ")
    .replace(/<[^>]*>/g, (tag) => {
      const spoken = [...tag.matchAll(/\s(?:alt|aria-label|placeholder|content|title)="([^"]*)"/g)];
      return ` ${spoken.map(([, text]) => text).join(" ")} `;
    })
    .replace(/&nbsp;|&#xa0;|\u00a0/gi, " ");
  return [...seen.matchAll(/(?<![\w.])\d[\d.,–]*\s(?:mm|cm²?|m|ml|l)(?![\w/])[^.]{0,30}/g)].map(
    ([found]) => found,
  );
}
