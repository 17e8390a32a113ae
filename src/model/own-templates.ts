/**
 * Parts of pages that a guide may write itself, as Markdown in `templates/NAME.md`: the list of pages at the foot of each page
 * and what stands above its last lines, or what is on the first page below its title.
 */
export const templateNames = ["foot", "home"] as const;
export type TemplateName = (typeof templateNames)[number];

export const isTemplateName = (name: string): name is TemplateName =>
  templateNames.some((known) => known === name);
