import { shown, unknownOption, VeladisError } from "../core/index";

const UNCERTAIN = "amplitude({ uncertainty }), which keeps it in the history";

/** What people write for a part of a reading, or for a fact that has its place elsewhere, with where it belongs. */
const elsewhere: Readonly<Record<string, string>> = /* @__PURE__ */ Object.freeze({
  amplitude: "vector.amplitude",
  at: "hertz",
  frequency: "hertz",
  hz: "hertz",
  Hz: "hertz",
  uncertainty: UNCERTAIN,
  u: UNCERTAIN,
  U: UNCERTAIN,
  "±": UNCERTAIN,
  "+-": UNCERTAIN,
  "+/-": UNCERTAIN,
  plusMinus: UNCERTAIN,
  k: UNCERTAIN,
  sigma: UNCERTAIN,
  stdev: UNCERTAIN,
  crest: "crestFactor",
  cf: "crestFactor",
  detection: "detector",
  place: "place of the machine",
  location: "place of the machine",
  speed: "speed of the machine",
  rpm: "speed of the machine",
  support: "support of the machine",
  mounting: "mounting of the machine",
  condition: "condition of the machine",
});

/** The parts of a reading that a person gives. */
const parts: readonly string[] = /* @__PURE__ */ Object.freeze([
  "value",
  "unit",
  "detector",
  "quantity",
  "hertz",
  "level",
  "crestFactor",
  "state",
]);

/** What else a reading has: how it was made, and what it is written in. */
const others: readonly string[] = /* @__PURE__ */ Object.freeze(["assumed", "history", "as"]);

/** What stands beside a reading in an answer of the library, with the part of it that tells that it is one. */
const besides: Readonly<Record<string, string>> = /* @__PURE__ */ Object.freeze({
  // a limit
  printed: "printed",
  name: "printed",
  standard: "printed",
  edition: "printed",
  source: "printed",
  provenance: "printed",
  verified: "printed",
  // the overall of a record or of a profile, and a line of a spectrum
  band: "band",
  bins: "band",
  edges: "band",
  order: "band",
  method: "band",
  detrend: "band",
  window: "band",
  rate: "band",
  count: "band",
  seconds: "band",
  settlingTime: "band",
  resolution: "band",
  densityUnit: "band",
  peak: "densityUnit",
  sigmas: "sigmas",
  within: "sigmas",
  bin: "bin",
  // the reading that an answer of the command came from
  from: "history",
});

/** Whether a reading may have a key: `toString` of one that mathjs holds too, which says nothing of it. */
function isKnown(reading: Readonly<Record<string, unknown>>, key: string): boolean {
  if (parts.includes(key) || others.includes(key)) return true;
  if (reading[key] === undefined || typeof reading[key] === "function") return true;
  return Object.hasOwn(besides, key) && Object.hasOwn(reading, besides[key] as string);
}

/**
 * Refuses a key that no reading has: what is passed over could make a verdict milder. Answers of the library, which are
 * readings with more beside them, pass.
 *
 * @throws {@link VeladisError} `unknown-option` with the keys there are and the one that is meant
 */
export function refuseOtherKeys(reading: object): void {
  // a list is no reading at all, whatever it holds
  if (Array.isArray(reading) || ArrayBuffer.isView(reading)) return;
  for (const key in reading) {
    if (isKnown(reading as Record<string, unknown>, key)) continue;
    const place = { parameter: "reading", option: key };
    if (!Object.hasOwn(elsewhere, key)) throw unknownOption(key, parts, "a part of a reading", place);
    throw new VeladisError("unknown-option", {
      expected: `a part of a reading; did you mean ${elsewhere[key]}?`,
      received: shown(key),
      allowed: parts,
      ...place,
    });
  }
}
