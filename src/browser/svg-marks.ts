/** Marks of SVG as elements. */
export function svgMarks(marks: string): Element[] {
  const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  svg.innerHTML = marks;
  return [...svg.children];
}
