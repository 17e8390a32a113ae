/** A drawing in its place on a page, drawn when the page is made; nothing where there is none. */
export function Picture({ draw }: { draw: () => string | undefined }) {
  const svg = draw();
  if (!svg) return null;
  return (
    <div class="picture">
      <raw-html html={svg} />
    </div>
  );
}
