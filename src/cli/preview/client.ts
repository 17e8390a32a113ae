/**
 * Runs in each page of a preview: shows over it what is wrong, and loads it anew after a change, where it was scrolled to.
 * It is handed over as its own text, so it reaches for nothing outside itself.
 */
export function client(): void {
  const own = document.currentScript as HTMLScriptElement;
  const place = `preview ${location.pathname}`;
  const kept = sessionStorage.getItem(place);
  sessionStorage.removeItem(place);
  const wrong = document.createElement("pre");
  wrong.className = "preview-errors";
  wrong.setAttribute("role", "alert");
  wrong.hidden = true;
  addEventListener("DOMContentLoaded", () => {
    document.body.append(wrong);
    if (kept !== null) scrollTo({ top: Number(kept), behavior: "instant" });
  });
  const events = new EventSource(`/preview/events${new URL(own.src).search}`);
  events.addEventListener("wrong", ({ data }) => {
    wrong.textContent = JSON.parse(data);
    wrong.hidden = false;
  });
  events.addEventListener("fresh", () => {
    sessionStorage.setItem(place, String(scrollY));
    location.reload();
  });
}

export const style = `
.preview-errors { position: fixed; inset: auto 0 0; z-index: 9; max-height: 60vh; overflow: auto; margin: 0; padding: 1rem; background: #3b0a0a; color: #ffffff; font: 0.9rem/1.4 ui-monospace, monospace; white-space: pre; }
.preview-errors[hidden] { display: none; }
.preview-card { display: flex; flex-wrap: wrap; gap: 1rem; justify-content: center; padding: 1rem; }
.preview-card img { width: min(100%, 30rem); border: 1px solid #6d7f7d; }
@media (min-width: 110rem) { .preview-card { position: fixed; inset: 4rem 1rem auto auto; width: 30rem; } }
`;
