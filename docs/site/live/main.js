/** The live parts of the site, by the name their place carries. The library itself does the work; nothing is fetched. */
import { converter } from "./converter.js";
import { nomograph } from "./nomograph.js";
import { severity } from "./severity.js";
import { trip } from "./trip.js";

const parts = { converter, nomograph, severity, trip };

for (const place of document.querySelectorAll("[data-live]")) {
  place.replaceChildren();
  parts[place.dataset.live]?.(place);
}
