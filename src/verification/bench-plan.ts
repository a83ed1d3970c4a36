import { amountAmplitude, convertAmplitude, linearTypeOf, multipliedAmplitude } from "../amplitude/index";
import { cautions, finiteResult, requireGiven, requireList, shown, VeladisError } from "../core/index";
import { bandResponse, resetLevel, thresholdOf } from "../device/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { type Amplitude, type Assumption, format, significant, union } from "../reading/index";
import { statedAlone, statedText } from "../uncertainty/index";
import { type BenchNumbers, benchMoves, clearMove, type Output, setMove, TAKE_TIME } from "./bench-moves";
import { orderedMoves, type PlacedMove } from "./bench-order";
import { type BenchSettings, requireBenchSettings } from "./bench-settings";
import { type Shaker, shakerReach } from "./shaker";
import { expandedMargins } from "./tolerance";

/** One step of a bench test. */
export interface BenchStep {
  readonly number: number;
  readonly what: string;
  readonly hertz: number;
  /** r/min of the same frequency. */
  readonly speed: number;
  /** Level of the shaker in the device's unit; null for a step without vibration. */
  readonly level: Amplitude | null;
  readonly displacement: Amplitude | null;
  readonly acceleration: Amplitude | null;
  /** Whether the shaker can give it. */
  readonly possible: boolean;
  /** What forbids it. */
  readonly limitedBy: readonly string[];
  readonly expect: string;
}

/** A bench test step by step. */
export interface BenchPlan {
  readonly threshold: Amplitude;
  readonly reset: Amplitude;
  /** What was assumed in threshold and reset level, and in what the shaker has to give and can. */
  readonly assumed: readonly Assumption[];
  readonly steps: readonly BenchStep[];
  /** Whether the shaker can do all of it. */
  readonly possible: boolean;
  /** Before the first step: what this shaker leaves unproven, then what is done for safety. */
  readonly before: readonly string[];
  /** On the steps, and on what is done after the last. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

/** ISO 2954's reference frequency, the third-octave 10^(19/10) Hz; read in a survey that quotes the standard. */
const REFERENCE: Frequency = "79.4 Hz";

/** Share of the level that a device reads at the -3 dB edge of its band, less what its other edge takes off. */
const IN_BAND = 0.7;

/** Disconnected for the test, the device protects nothing: said before the first step. */
const BEFORE: readonly string[] = /* @__PURE__ */ Object.freeze([
  "before: record the setting as found, and under the site's procedure disconnect this device from the trip of the running machine",
  "while it is disconnected the machine has no vibration trip from this device: stop it, or protect it in another way the site approves",
]);

/** Share of the level that the device nominally reads at a frequency. */
function responseOf({ band }: BenchSettings, hertz: number): number {
  return band === undefined ? 1 : bandResponse({ hertz }, band);
}

/** What a shaker leaves unproven. */
function unproven({ level }: Shaker, sets: boolean, possible: boolean): string[] {
  if (possible) return [];
  if (level === undefined) {
    return [
      `this shaker cannot give some of the levels: what those steps prove stays unproven${sets ? "" : ", and it proves no trip"}; take another shaker, or another frequency in the band`,
    ];
  }
  const written = typeof level === "string" ? level : format(level);
  return [
    `the shaker gives one level, ${written}: ${sets ? "that the output sets there proves a threshold at or below it, and not where it is set" : "it proves the reading there, and no trip"}; take a shaker that can be set to prove the setting`,
  ];
}

/** An uncertainty as it was stated, and what was taken of one without a coverage factor. */
function uncertaintyWords(text: string): string {
  const stated = statedAlone(text);
  return `${statedText(stated)}${stated.coverage === undefined ? ", taken as a bound with equal chance within" : ""}`;
}

function notesOn(settings: BenchSettings, shaker: Shaker, hertz: readonly number[]): string[] {
  const { tolerance = "5 %" } = settings;
  return [
    "mount the sensor as on the machine (stud torque, cable tied down); levels of a sine, one frequency at a time",
    `readings are held against ${tolerance}${shaker.uncertainty === undefined ? "" : `; the shaker's own uncertainty is ${uncertaintyWords(shaker.uncertainty)}`}`,
    ...hertz.flatMap((one) => {
      const share = responseOf(settings, one);
      return share > 0.98
        ? []
        : [
            share < IN_BAND
              ? `${significant(one)} Hz lies outside the band: the device nominally reads ${significant(share)} of the level there, and sees little of such a vibration; no level proves a setting`
              : `at ${significant(one)} Hz a device of this band nominally reads ${significant(share)} of the level, so it takes ${significant(1 / share)} times the level for the same reading`,
          ];
    }),
    "after: put every setting back, reconnect the device to the trip, lift every bypass, prove the whole path to the machine's trip, and record who did so and when",
  ];
}

/**
 * The steps of a bench test that proves reading, trip point, reset point, delay, latch, power loss and sensor fault,
 * with what the shaker must give and whether it can.
 *
 * @param settings - as stored in the device; the settings of a `TripLogic` serve
 * @param shaker - the limits of the reference shaker
 * @throws {@link VeladisError} `missing-option`, `out-of-range`, `unknown-option` for a mistyped key, and as {@link shakerReach}
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { benchPlan } from "veladis/protection";
 *
 * const plan = benchPlan(
 *   { threshold: "9 mm/s rms", hysteresis: "8 %", onDelay: 8, latching: true, frequencies: ["2400 r/min"] },
 *   { lowest: "8 Hz", highest: "3 kHz", displacement: "5 mm pp", acceleration: "6 g pk" },
 * );
 * format(plan.reset); // => "8.28 mm/s rms"
 * const [first] = plan.steps;
 * first?.level && format(first.level); // => "2.25 mm/s rms"
 * first?.displacement && format(first.displacement); // => "25.3 um pp"
 * first?.acceleration && format(first.acceleration); // => "0.0815 g pk"
 * plan.possible; // => true
 * ```
 */
export function benchPlan(settings: BenchSettings, shaker: Shaker): BenchPlan {
  requireBenchSettings(
    requireGiven(settings, "settings with threshold, hysteresis, onDelay and latching", { parameter: "settings" }),
  );
  requireGiven(shaker, "a shaker with its limits", { parameter: "shaker" });
  const threshold = thresholdOf(settings);
  const reset = resetLevel(threshold, settings.hysteresis);
  // a shaker of one frequency proves nothing at another
  const isOne = hertzOf(shaker.lowest) === hertzOf(shaker.highest);
  const usual = isOne ? shaker.lowest : REFERENCE;
  const frequencies = requireList<Frequency>(settings.frequencies ?? [usual], "a list of frequencies", {
    option: "frequencies",
  }).map(hertzOf);
  const [main, ...others] = frequencies;
  if (main === undefined) {
    throw new VeladisError("missing-option", { expected: "at least one frequency to test at", received: "nothing" });
  }
  const uncertainty = shaker.uncertainty === undefined ? 0 : expandedMargins(shaker.uncertainty, threshold).above;
  const load = settings.load === undefined ? "0 kg" : settings.load;
  const allowed = amountAmplitude(settings.tolerance ?? "5 %", threshold);
  const tolerance = finiteResult(allowed.value / threshold.value);
  if (tolerance >= 1 || uncertainty >= threshold.value) {
    throw new VeladisError("out-of-range", {
      expected:
        "a tolerance of the device and an uncertainty of the shaker below the threshold, or no level proves that it trips",
      received: shown(tolerance >= 1 ? settings.tolerance : shaker.uncertainty),
    });
  }
  const response = responseOf(settings, main);
  if (response < IN_BAND) {
    throw new VeladisError("out-of-range", {
      expected: "a first frequency within the band of the device, since it proves the trip",
      received: `${significant(main)} Hz, where it reads ${significant(response)} of the level`,
    });
  }
  let assumed = union(reset.assumed, allowed.assumed);

  const levelOf = ({ share, hertz }: PlacedMove): Amplitude | null =>
    share === null ? null : { ...multipliedAmplitude(threshold, share, "share of the threshold"), hertz };
  const canDo = (move: PlacedMove): boolean => {
    const level = levelOf(move);
    return level === null || shakerReach(level, shaker, load).possible;
  };
  const stepOf = (move: PlacedMove, number: number): BenchStep => {
    const { what, hertz, expect } = move;
    const level = levelOf(move);
    const reach = level === null ? null : shakerReach(level, shaker, load);
    const as = (to: string) => (level === null ? null : convertAmplitude(level, to));
    const [displacement, acceleration] = [as("um pp"), as("g pk")];
    for (const one of [displacement, acceleration, reach]) assumed = union(assumed, one?.assumed);
    return Object.freeze({
      number,
      what,
      hertz,
      speed: finiteResult(hertz * 60),
      level: level && Object.freeze(level),
      displacement,
      acceleration,
      possible: reach?.possible ?? true,
      limitedBy: reach?.limitedBy ?? [],
      expect,
    });
  };
  const ownAt = (hertz: number): number | undefined => {
    if (shaker.level === undefined) return undefined;
    const own = convertAmplitude(shaker.level, linearTypeOf(threshold), { at: { hertz } });
    assumed = union(assumed, own.assumed);
    return finiteResult(own.value / threshold.value);
  };
  const texts = (level: number): string => format({ ...threshold, value: level });
  const numbersAt = (hertz: number): BenchNumbers => ({
    tolerance,
    uncertainty: finiteResult(uncertainty / threshold.value),
    response: responseOf(settings, hertz),
    resetShare: reset.value / threshold.value,
    own: ownAt(hertz),
    reset: texts(reset.value),
    threshold: texts(threshold.value),
    text: (share) => texts(threshold.value * share),
    within: settings.tolerance ?? "5 %",
  });
  const movesAt = (hertz: number): PlacedMove[] =>
    benchMoves(settings, numbersAt(hertz)).map((move) => ({ ...move, hertz }));
  const moves = [...movesAt(main), ...others.flatMap((hertz) => movesAt(hertz).filter(({ reading }) => reading))];
  const between = {
    clear: (output: Output) => clearMove(settings, output),
    set: setMove(settings, numbersAt(main)),
  };
  const steps = orderedMoves(moves, canDo, between).map((move, i) => stepOf(move, i + 1));
  const possible = steps.every((one) => one.possible);
  const sets = steps.some(({ what, possible: can }) => what === TAKE_TIME && can);
  return Object.freeze({
    threshold,
    reset,
    assumed,
    steps: Object.freeze(steps),
    possible,
    before: Object.freeze([...unproven(shaker, sets, possible), ...BEFORE]),
    notes: Object.freeze(notesOn(settings, shaker, frequencies)),
    cautions,
  });
}
