import { convertAmplitude } from "../amplitude/index";
import { attempt, cautions, lazily } from "../core/index";
import { parseAmplitude } from "../reading/index";
import { numberIn } from "./number-in";
import type { ChangedSetting, PlantChange } from "./plant-change";
import { requireChange } from "./require-changes";

/** The new reading over the old one; undefined where the two cannot be compared. */
function ratioOfReadings({ old, new: now }: PlantChange): number | undefined {
  const told = attempt(() => {
    const before = parseAmplitude(old);
    return convertAmplitude(parseAmplitude(now), `${before.unit} ${before.detector}`).value / before.value;
  });
  return told.ok ? told.value : undefined;
}

/** Whether a setpoint is higher than it was, is gone, or may be. */
function isRaised(change: PlantChange): boolean {
  if (change.new === "") return true;
  return change.old !== "" && (ratioOfReadings(change) ?? 2) > 1;
}

/** Whether a number is higher than it was, was not there, or may be. */
function isLonger({ old, new: now }: PlantChange): boolean {
  const [before, after] = [numberIn(old === "" ? "0" : old), numberIn(now === "" ? "0" : now)];
  return before === undefined || after === undefined || after > before;
}

const LESS = "it protects less than before: is there the advice of the maker, and what protects the machine meanwhile?";
const PROVE = "prove reading and trip again before the machine relies on it";

/** What to know of a change of a setting, where it can hurt someone; common practice, no source. */
const rules = /* @__PURE__ */ lazily(
  (): {
    readonly [Setting in ChangedSetting]?: readonly [when: (change: PlantChange) => boolean, text: string];
  } => ({
    bypass: [
      ({ new: now }) => now !== "",
      "bypassed: the machine has no protection from it until it is lifted; the permit of the site, its people and what protects the machine meanwhile come first",
    ],
    trip: [isRaised, `the trip is raised or taken away: ${LESS}`],
    alarm: [isRaised, `the alarm is raised or taken away: ${LESS}`],
    ceiling: [isRaised, "the ceiling is raised: it is the maker's or the site's, and needs their word"],
    "trip delay s": [isLonger, `the trip comes later: ${LESS}`],
    "start inhibit s": [isLonger, `no trip is set for longer from each start: ${LESS}`],
    multiplier: [({ new: now }) => now !== "", `the trip is raised from each start: ${LESS}`],
    latching: [
      ({ new: now }) => now.toLowerCase() !== "yes",
      "a trip that clears by itself may let the machine start again by itself, with people at it",
    ],
    contact: [() => true, `what a power loss and a broken wire do is another: ${PROVE}`],
    coil: [() => true, `what a power loss and a broken wire do is another: ${PROVE}`],
    "sensor fault": [({ new: now }) => now.toLowerCase() !== "alarm", `a sensor fault trips nothing: ${LESS}`],
    sensor: [() => true, PROVE],
    loop: [() => true, PROVE],
    band: [() => true, PROVE],
    hysteresis: [() => true, PROVE],
  }),
);

/**
 * What to know of a change before it is made: first where it can hurt someone, then what every change asks for.
 *
 * @throws {@link VeladisError} `missing-option` for what is no entry
 * @example
 * ```ts
 * import { changeCautions, changeTitles, parseChanges } from "veladis/plant";
 *
 * const row = ["2026-03-12", "LU-01", "trip delay s", "8", "20", "start-up", "shift B", "plant engineer", "", ""];
 * const [change] = parseChanges({ heading: changeTitles, rows: [row] }).changes;
 * change && changeCautions(change)[0]?.split(":")[0]; // => "the trip comes later"
 * ```
 */
export function changeCautions(change: PlantChange): readonly string[] {
  const { setting } = requireChange(change);
  const [when, text] = rules()[setting] ?? [];
  return Object.freeze([...(when?.(change) === true && text !== undefined ? [text] : []), ...cautions]);
}
