import { finiteResult, inPlace, type Source, withParameters } from "../core/index";
import { hertz } from "../frequency/index";
import type { Step } from "../reading/index";
import { journalHistory } from "./balance-steps";
import { kilogramMetres, kilograms } from "./mass";
import { MASS, type Rotor, requireRotor, SPEED, splitToPlanes } from "./rotor";
import { angularSpeed, centrifugalForce } from "./unbalance";

const API_4WN = {
  title: "API 610 and API 617",
  where:
    "residual unbalance 4 W / N in oz·in for each journal, W its static load in lb, N in r/min; 6350 W / N in g·mm with W in kg",
  provenance: "memory",
} as const satisfies Source;

/** Permissible residual unbalance of each plane by the load on its journal. */
export interface JournalUnbalance {
  /** Static load on each journal, in kg. */
  readonly loads: { readonly left: number; readonly right: number };
  /** Permissible residual unbalance of each plane, in g·mm. */
  readonly planes: { readonly left: number; readonly right: number };
  /** Of both planes together, in g·mm. */
  readonly unbalance: number;
  /** The grade in mm/s that this comes to, whatever rotor and speed. */
  readonly grade: number;
  /** Centrifugal force of the unbalance of both planes together at that speed, in N. */
  readonly force: number;
  readonly source: Source;
  readonly note: string;
  /** The steps that led to the force, by way of the planes. */
  readonly history: readonly Step[];
}

const NOTE =
  "N is the highest speed at which the rotor runs for long; the edition that is ordered governs, and may ask for more or for a grade";

/** Ounce-inches for each pound of journal load and each turn a minute of speed. */
const FACTOR = 4;

/**
 * The residual unbalance that API 610 and API 617 permit in each of two planes: `4 W / N`, W the static load on the
 * journal beside the plane.
 *
 * @param rotor - mass, the highest speed at which it runs for long, and where its bearings are; without `planes` each
 *   journal carries half
 * @throws {@link VeladisError} `missing-option`, `syntax`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { journalUnbalance } from "veladis/protection";
 *
 * const pump = journalUnbalance({ mass: "120 kg", speed: "2980 r/min" });
 * pump.planes.left.toFixed(0); // => "128"
 * pump.grade.toFixed(3); // => "0.665"
 * ```
 */
export function journalUnbalance(rotor: Rotor): JournalUnbalance {
  return withParameters({ rotor }, () => {
    const { mass, speed, planes } = requireRotor(rotor, { mass: true, speed: true, planes: true });
    const kg = inPlace(MASS, () => kilograms(mass));
    const turns = inPlace(SPEED, () => finiteResult(60 * hertz(speed)));
    const loads = splitToPlanes(kg, planes);
    const pound = kilograms("1 lb");
    const permitted = (load: number): number =>
      finiteResult(1e6 * kilogramMetres(`${(FACTOR * load) / pound / turns} oz·in`));
    const of = { left: permitted(loads.left), right: permitted(loads.right) };
    const unbalance = finiteResult(of.left + of.right);
    const omega = angularSpeed(speed);
    return Object.freeze({
      loads,
      planes: Object.freeze(of),
      unbalance,
      grade: finiteResult((unbalance * omega) / kg / 1000),
      force: centrifugalForce(`${unbalance} g·mm`, speed),
      source: API_4WN,
      note: NOTE,
      history: journalHistory({ kg, turns, loads, of, unbalance, omega }),
    });
  });
}
