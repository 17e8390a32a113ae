import { drawingToSvg } from "../drawing/svg.ts";
import { qrCode } from "../print/cards/qr-code.ts";
import { guide, say } from "./fit-data.ts";
import { partById } from "./page-parts.ts";
import { toDom } from "./to-dom.ts";

/** The figures as a link to send and as a code for another phone to read off the screen. */
const link = partById<HTMLAnchorElement>("fit-link");
const part = partById<HTMLDetailsElement>("fit-share");
const shown = partById("fit-code");
const codeMm = 60;

/** Follows the figures: the address that brings them back. */
export function shareAddress(address: string): void {
  link.href = address;
  if (part.open) showCode();
}

/** Nobody else can open an address on this device's own disk: there the code is of the guide as it is published. */
function publicAddress(): string | undefined {
  const here = new URL(link.href);
  if (/^https?:$/.test(here.protocol)) return here.href;
  const path = /\/rigs\/[^/]+$/.exec(here.pathname)?.[0];
  return guide.siteAddress && path ? new URL(`.${path}${here.search}`, guide.siteAddress).href : undefined;
}

function showCode(): void {
  const address = publicAddress();
  if (!address) {
    shown.textContent = say("fit.code-none");
    return;
  }
  const drawing = {
    widthMm: codeMm,
    heightMm: codeMm,
    items: qrCode(address).draw(codeMm),
    title: say("fit.code"),
    description: address,
  };
  const html = drawingToSvg(drawing, { idPrefix: "fit-code", theme: "print" });
  shown.replaceChildren(...toDom({ type: "raw-html", key: null, props: { html } }));
}

part.addEventListener("toggle", () => part.open && showCode());
