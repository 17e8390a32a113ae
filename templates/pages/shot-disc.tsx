import { ballDiameterMm, type Metal } from "../../src/core/tackle/shot.ts";

/** A shot as large as it is, as far as a screen knows its own size. */
export function ShotDisc({ massG, metal }: { massG: number; metal: Metal }) {
  const across = `${ballDiameterMm(massG, metal).toFixed(2)}mm`;
  const svg = `<svg class="shot-disc" aria-hidden="true" width="${across}" height="${across}" viewBox="0 0 2 2"><circle cx="1" cy="1" r="1" fill="currentColor"/></svg>`;
  return <raw-html html={svg} />;
}
