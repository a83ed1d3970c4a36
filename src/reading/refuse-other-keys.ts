import { shown, VeladisError } from "../core/index";

const UNCERTAIN = "amplitude({ uncertainty }), which keeps it in the history";

/** What people write for a part of a reading, or for a fact that has its place elsewhere, with where it belongs. */
const elsewhere: Readonly<Record<string, string>> = /* @__PURE__ */ Object.freeze({
  amplitude: "vector.amplitude",
  frequency: "hertz",
  freq: "hertz",
  hz: "hertz",
  Hz: "hertz",
  herz: "hertz",
  frequencyHz: "hertz",
  frequency_hz: "hertz",
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
  crestfactor: "crestFactor",
  crest_factor: "crestFactor",
  val: "value",
  units: "unit",
  detection: "detector",
  place: "place of the machine",
  location: "place of the machine",
  speed: "speed of the machine",
  rpm: "speed of the machine",
  support: "support of the machine",
  mounting: "mounting of the machine",
  condition: "condition of the machine",
});

const KNOWN = ["value", "unit", "detector", "quantity", "hertz", "level", "crestFactor", "state"];

/**
 * Refuses a key that a reading does not have and that a person may have written for one that counts: what is passed over
 * could make a verdict milder. Answers of the library, which are readings with more beside them, have none of these.
 *
 * @throws {@link VeladisError} `unknown-option` with the keys there are and the one that is meant
 */
export function refuseOtherKeys(reading: object): void {
  for (const key in reading) {
    if (!Object.hasOwn(elsewhere, key) || (reading as Record<string, unknown>)[key] === undefined) continue;
    throw new VeladisError("unknown-option", {
      expected: `a part of a reading; did you mean ${elsewhere[key]}?`,
      received: shown(key),
      allowed: KNOWN,
      ...{ parameter: "reading", option: key },
    });
  }
}
