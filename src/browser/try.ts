import { partWithin } from "./page-parts.ts";
import { startRigFilms } from "./rig-films.ts";
import { startTryPage } from "./try-page.ts";

/** Films with a rig of the reader's own: on the page that is for them, or on the rig's page. */
const place = document.getElementById("rig-films");
if (place) startRigFilms(place);
else startTryPage(partWithin(document, "#try-form"));
