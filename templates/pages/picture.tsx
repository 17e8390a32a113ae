/** A drawing in its place on a page; nothing where there is none. */
export function Picture({ svg }: { svg: string | undefined }) {
  if (!svg) return null;
  return (
    <div class="picture">
      <raw-html html={svg} />
    </div>
  );
}
