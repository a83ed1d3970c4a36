import { convertAmplitude, linearTypeOf } from "../amplitude/index";
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
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { format, type Rounding, significant, union, wholeSteps } from "../reading/index";
import { benchBase, levelOfMove } from "./bench-base";
import type { Output } from "./bench-move";
import { type BenchNumbers, benchMoves, clearMove, SHAKER_WORDS, setMove, TAKE_TIME } from "./bench-moves";
import { IN_BAND, notesOn, responseOf, saidBefore } from "./bench-notes";
import { orderedMoves, type PlacedMove } from "./bench-order";
import { type BenchSettings, requireBenchSettings } from "./bench-settings";
import { loopNotes, signalsAt } from "./bench-signals";
import type { BenchPlan, BenchStep } from "./bench-step";
import { settingsTold, shakerTold } from "./bench-told";
import { fixedHertz, resolutionOf, type Shaker, shakerReach } from "./shaker";

/** ISO 2954's reference frequency, the third-octave 10^(19/10) Hz; read in a survey that quotes the standard. */
export const REFERENCE: Frequency = "79.4 Hz";

/** How far apart two frequencies are, in octaves. */
function octaves(one: number, other: number): number {
  return Math.abs(Math.log2(one / other));
}

/** The frequency of a shaker to test at where none is asked for: of fixed ones in the band, the nearest to the reference. */
function usualFrequency(settings: BenchSettings, shaker: Shaker): Frequency {
  const fixed = fixedHertz(shaker);
  if (fixed === undefined) return REFERENCE;
  const inBand = fixed.filter((hertz) => responseOf(settings, hertz) >= IN_BAND);
  const reference = hertzOf(REFERENCE);
  const hertz = (inBand.length > 0 ? inBand : fixed).reduce((a, b) =>
    octaves(b, reference) < octaves(a, reference) ? b : a,
  );
  return { hertz };
}

/** The frequencies to test at in hertz; one that is given twice is tried once. */
function frequenciesOf(settings: BenchSettings, shaker: Shaker): readonly [number, ...number[]] {
  const place = { parameter: "settings", option: "frequencies" };
  const given = requireList<Frequency>(
    settings.frequencies ?? [usualFrequency(settings, shaker)],
    "a list of frequencies",
    { option: "frequencies" },
  );
  const [main, ...others] = new Set(given.map((one, index) => inPlace({ ...place, index }, () => hertzOf(one))));
  if (main !== undefined) return [main, ...others];
  throw new VeladisError("missing-option", { expected: "at least one frequency to test at", received: "nothing" });
}

/**
 * The steps of a bench test that proves reading, trip point, reset point, delay, latch, power loss and sensor fault,
 * with what the shaker must give and whether it can.
 *
 * Where loop or sensor are told with the settings, each step tells the signal at its level.
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
    const { threshold, reset, numbers, assumed: first } = benchBase(settings, shaker.uncertainty, "shaker");
    const frequencies = frequenciesOf(settings, shaker);
    const [main, ...others] = frequencies;
    const load = settings.load === undefined ? "0 kg" : settings.load;
    const response = inPlace({ parameter: "settings" }, () => responseOf(settings, main));
    if (response < IN_BAND) {
      throw new VeladisError("out-of-range", {
        expected: "a first frequency within the band of the device, since it proves the trip",
        received: `${significant(main)} Hz, where it reads ${significant(response)} of the level`,
      });
    }
    let assumed = first;
    const canDo = (move: PlacedMove<number>): boolean => {
      const level = levelOfMove(threshold, move);
      return level === null || shakerReach(level, shaker, load).possible;
    };
    const stepOf = (move: PlacedMove<number>, number: number): BenchStep => {
      const { what, hertz, expect } = move;
      const level = levelOfMove(threshold, move);
      const reach = level === null ? null : shakerReach(level, shaker, load);
      const as = (to: string) => (level === null ? null : convertAmplitude(level, to));
      const [displacement, acceleration] = [as("um pp"), as("g pk")];
      const signals = level === null ? [] : inPlace({ parameter: "settings" }, () => signalsAt(level, settings));
      for (const one of [displacement, acceleration, reach, ...signals]) assumed = union(assumed, one?.assumed);
      return Object.freeze({
        number,
        what,
        hertz,
        speed: finiteResult(hertz * 60),
        level,
        displacement,
        acceleration,
        signals: Object.freeze(signals.map(({ signal }) => Object.freeze(signal))),
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
    const numbersAt = (hertz: number): BenchNumbers => ({
      ...numbers,
      response: responseOf(settings, hertz),
      own: ownAt(hertz),
      settable: settableAt(hertz),
      words: SHAKER_WORDS,
    });
    const movesAt = (hertz: number): PlacedMove<number>[] =>
      benchMoves(settings, numbersAt(hertz)).map((move) => ({ ...move, hertz }));
    const moves = [...movesAt(main), ...others.flatMap((hertz) => movesAt(hertz).filter(({ reading }) => reading))];
    const between = {
      clear: (output: Output) => clearMove(settings, output, SHAKER_WORDS),
      set: setMove(settings, numbersAt(main)),
      source: SHAKER_WORDS.source,
    };
    const steps = orderedMoves(moves, canDo, between).map((move, i) => stepOf(move, i + 1));
    const sets = steps.some(({ what, possible: can }) => what === TAKE_TIME && can);
    return Object.freeze({
      threshold,
      reset,
      assumed,
      steps: Object.freeze(steps),
      possible: steps.every((one) => one.possible),
      told: Object.freeze([...settingsTold(settings, threshold, reset), ...shakerTold(shaker, load)]),
      before: saidBefore(shaker, sets, steps),
      notes: Object.freeze([
        ...loopNotes({ ...threshold, hertz: main }, settings),
        ...notesOn(settings, shaker, frequencies),
      ]),
      cautions,
    });
  });
}
