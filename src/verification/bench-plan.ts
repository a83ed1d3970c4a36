import { amountAmplitude, convertAmplitude, derivedAmplitude, linearTypeOf } from "../amplitude/index";
import {
  cautions,
  finiteResult,
  inPlace,
  requireGiven,
  requireList,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { resetLevel, thresholdOf } from "../device/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import {
  type Amplitude,
  type Assumption,
  format,
  type Rounding,
  significant,
  union,
  wholeSteps,
} from "../reading/index";
import type { Output } from "./bench-move";
import { type BenchNumbers, benchMoves, clearMove, setMove, TAKE_TIME } from "./bench-moves";
import { IN_BAND, notesOn, responseOf, saidBefore } from "./bench-notes";
import { orderedMoves, type PlacedMove } from "./bench-order";
import { type BenchSettings, requireBenchSettings } from "./bench-settings";
import { resolutionOf, type Shaker, shakerReach } from "./shaker";
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
  return withParameters({ shaker, settings }, () => {
    requireBenchSettings(
      requireGiven(settings, "settings with threshold, hysteresis, onDelay and latching", { parameter: "settings" }),
    );
    requireGiven(shaker, "a shaker with its limits", { parameter: "shaker" });
    const threshold = thresholdOf(settings);
    const reset = resetLevel(threshold, settings.hysteresis);
    // a shaker of one frequency proves nothing at another
    const edge = (option: "lowest" | "highest"): number =>
      inPlace({ parameter: "shaker", option }, () => hertzOf(shaker[option]));
    const isOne = edge("lowest") === edge("highest");
    const usual = isOne ? shaker.lowest : REFERENCE;
    const given = requireList<Frequency>(settings.frequencies ?? [usual], "a list of frequencies", {
      option: "frequencies",
    });
    // one that is given twice is tried once
    const frequencies = [
      ...new Set(
        given.map((one, index) => inPlace({ parameter: "settings", option: "frequencies", index }, () => hertzOf(one))),
      ),
    ];
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
    const response = inPlace({ parameter: "settings" }, () => responseOf(settings, main));
    if (response < IN_BAND) {
      throw new VeladisError("out-of-range", {
        expected: "a first frequency within the band of the device, since it proves the trip",
        received: `${significant(main)} Hz, where it reads ${significant(response)} of the level`,
      });
    }
    let assumed = union(reset.assumed, allowed.assumed);

    const levelOf = ({ share, hertz }: PlacedMove): Amplitude | null =>
      share === null
        ? null
        : {
            ...derivedAmplitude([threshold], Number((threshold.value * share).toPrecision(12)), {
              ...({ does: "scale", by: share } as const),
              note: "share of the threshold, as it can be set",
            }),
            hertz,
          };
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
    /** A share as it can be set: in the steps of the shaker, else in three digits; that of one level is what it is. */
    const settableAt = (hertz: number) => {
      const step = resolutionOf(shaker, linearTypeOf(threshold), hertz);
      assumed = union(assumed, step?.assumed);
      return (share: number, side: Rounding): number => {
        if (shaker.level !== undefined) return share;
        const level = threshold.value * share;
        const set = wholeSteps(level, step?.value ?? 10 ** (Math.floor(Math.log10(level)) - 2), side);
        if (set > 0) return finiteResult(set / threshold.value);
        throw new VeladisError("out-of-range", {
          expected: `a resolution of the shaker that sets ${format({ ...threshold, value: level })}`,
          received: shown(shaker.resolution),
          option: "resolution",
        });
      };
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
      settable: settableAt(hertz),
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
      before: saidBefore(shaker, sets, possible),
      notes: Object.freeze(notesOn(settings, shaker, frequencies)),
      cautions,
    });
  });
}
