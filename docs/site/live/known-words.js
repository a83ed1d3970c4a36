import { machineTypes } from "../../../src/entries/severity";
import { factWords, labelled } from "../../../src/severity/machine-words";
import { element } from "./dom.js";

/** A row of words that say one fact; each carries the fact for whoever holds the page against the parser. */
function row(fact, label, words) {
  const marked = words.map((word) => element("span", { "data-fact": fact, "data-label": label }, word));
  return [
    element("dt", {}, `${fact}: ${label}`),
    element("dd", {}, ...marked.flatMap((one, i) => (i === 0 ? [one] : [", ", one]))),
  ];
}

/** The words of a nameplate that the library understands, from the lists by which it reads them. */
export function knownWords() {
  const kinds = Object.entries(machineTypes).flatMap(([type, { also }]) => row("type", type, [type, ...also]));
  const facts = factWords.flatMap(([fact, label, plain, taken]) => row(fact, label, [...plain, ...taken]));
  return element(
    "details",
    {},
    element("summary", {}, "Words that are understood"),
    element("dl", {}, ...kinds, ...facts),
    element("p", {}, `Labels follow their name, as in category II: ${labelled.join(", ")}.`),
  );
}
