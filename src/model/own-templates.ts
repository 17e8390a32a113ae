/**
 * Parts of pages that a guide may write itself, as Markdown in `templates/NAME.md`: what stands at the head of each page beside
 * the mark that leads home, the list of pages at its foot and what stands above its last lines, or what is on the first page
 * below its title.
 */
export const templateNames = ["foot", "head", "home"] as const;
export type TemplateName = (typeof templateNames)[number];

export const isTemplateName = (name: string): name is TemplateName =>
  templateNames.some((known) => known === name);
