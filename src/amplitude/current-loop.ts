import {
  finiteResult,
  frozen,
  inPlace,
  raised,
  requireFinite,
  requireKnownOptions,
  requireText,
  type Source,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import {
  type Amplitude,
  type Assumption,
  amplitudeIn,
  type LoopState,
  type Made,
  madeOf,
  ownHistory,
  parseAmplitude,
  type ReadingTypeText,
  type Step,
  typeOf,
  worstState,
} from "../reading/index";
import { type ConvertedAmplitude, convertAmplitude } from "./convert-amplitude";
import type { ConvertOptions } from "./convert-options";

/** Currents, in mA, that bound what a healthy loop gives. */
export interface LoopLimits {
  /** At this and below it the loop has failed. */
  readonly lowFault: number;
  /** Down to this the signal still measures. */
  readonly lowest: number;
  /** Up to this the signal still measures; at it the loop is at its end, and the vibration may be higher. */
  readonly highest: number;
  /** At this and above it the loop has failed. */
  readonly highFault: number;
  readonly source: Source;
}

/** Signal limits of a 4-20 mA loop after NAMUR NE 43; from memory, not checked against a printed copy. */
export const loopLimits: LoopLimits = /* @__PURE__ */ frozen({
  lowFault: 3.6,
  lowest: 3.8,
  highest: 20.5,
  highFault: 21,
  source: { title: "NAMUR NE 43", provenance: "memory" },
} as const);

/** A reading taken from a loop current. */
export interface LoopReading extends ConvertedAmplitude {
  readonly state: LoopState;
}

/** A loop current for a reading, with what was assumed on the way to it. */
export interface LoopCurrent {
  readonly milliamperes: number;
  /** Where in its range the loop then is; out of range also for a reading that came by a loop out of its own. */
  readonly state: LoopState;
  readonly assumed: readonly Assumption[];
  readonly history: readonly Step[];
}

/** A 4-20 mA loop with a live zero, read in both directions. */
export interface CurrentLoop {
  /**
   * The reading for a current in mA. A current below 4 mA that is no fault reads as the start of the range, one
   * at or above the highest measuring current as that current, and `state` says so.
   *
   * @throws {@link VeladisError} `sensor-fault` at the fault limits and beyond, or as {@link convertAmplitude}
   */
  reading(milliamperes: number, as?: ReadingTypeText, options?: ConvertOptions): LoopReading;
  /**
   * The current in mA for a reading; clipped to the measuring range, and `state` says so.
   *
   * @throws {@link VeladisError} as {@link convertAmplitude}
   */
  current(reading: string | Amplitude, options?: ConvertOptions): LoopCurrent;
  /** The percentage of the range for a current in mA, unclipped. */
  percent(milliamperes: number): number;
}

const FORM = 'a range such as "0 to 25.4 mm/s rms"';

const limitKeys: Readonly<Record<keyof LoopLimits, true>> = /* @__PURE__ */ Object.freeze({
  lowFault: true,
  lowest: true,
  highest: true,
  highFault: true,
  source: true,
});

const LIMITS = "loop limits with lowFault < lowest <= 4 mA and 20 mA <= highest < highFault";

/** The limits themselves if they enclose one another. */
function requireLimits(limits: Omit<LoopLimits, "source">): typeof limits {
  const { lowFault, lowest, highest, highFault } = requireKnownOptions(limits, limitKeys, {
    what: "a limit of a loop",
    form: LIMITS,
    place: { parameter: "limits" },
  });
  if (
    requireFinite(lowFault, LIMITS, { option: "lowFault" }) < requireFinite(lowest, LIMITS, { option: "lowest" }) &&
    lowest <= 4 &&
    20 <= requireFinite(highest, LIMITS, { option: "highest" }) &&
    highest < requireFinite(highFault, LIMITS, { option: "highFault" })
  ) {
    return limits;
  }
  throw new VeladisError("out-of-range", {
    expected: LIMITS,
    received: [lowFault, lowest, highest, highFault].join(", "),
  });
}

/**
 * A 4-20 mA loop that carries a vibration reading: 4 mA is the start of its range, 20 mA the end.
 *
 * The loop itself carries no unit and no detector: the range must say both.
 *
 * @param range - start, end and reading type: `"0 to 25.4 mm/s rms"`
 * @param limits - fault and measuring limits in mA; {@link loopLimits} if not given
 * @throws {@link VeladisError} `syntax`, `out-of-range`, and as {@link parseAmplitude}
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { currentLoop } from "veladis/sensor";
 *
 * const loop = currentLoop("0 to 25.4 mm/s rms");
 * loop.reading(12).value; // => 12.7
 * format(loop.reading(12, "in/s pk")); // => "0.707 in/s pk"
 * const { milliamperes, state } = loop.current("12.7 mm/s rms");
 * [milliamperes, state]; // => [12, "in range"]
 * ```
 */
export function currentLoop(range: string, limits: Omit<LoopLimits, "source"> = loopLimits): CurrentLoop {
  return withParameters({ range, limits }, () => {
    // a number stands behind it, unlike in "peak to peak"
    const written = requireText(range, FORM, { parameter: "range" }).trim().replace(/\s+/g, " ");
    const [start, end, ...more] = written.split(/\sto\s+(?=[\d.+-])/) as [string, string?, ...string[]];
    if (end === undefined || more.length > 0) {
      throw new VeladisError("syntax", {
        expected: FORM,
        received: shown(range),
        parameter: "range",
      });
    }
    const full = parseAmplitude(end);
    const { type } = typeOf(full.unit, full.detector);
    const zero = parseAmplitude(/[^\d.eE+\s-]/.test(start) ? start : `${start} ${type}`);
    const { value: low, assumed } = convertAmplitude(zero, type);
    const span = full.value - low;
    if (full.level || zero.level || !(span > 0)) {
      throw new VeladisError("out-of-range", {
        expected: `${FORM}, rising and linear`,
        received: shown(range),
        parameter: "range",
      });
    }
    const { lowFault, lowest, highest, highFault } = requireLimits(limits);
    const stateOf = (current: number): LoopState =>
      current < 4 ? "below range" : raised(current) >= highest ? "above range" : "in range";
    return Object.freeze({
      reading(milliamperes: number, as: ReadingTypeText = type, options?: ConvertOptions): LoopReading {
        const current = requireFinite(milliamperes, "a loop current in mA", { parameter: "milliamperes" });
        if (current <= raised(lowFault) || raised(current) >= highFault) {
          throw new VeladisError("sensor-fault", {
            expected: `a loop current between ${lowFault} and ${highFault} mA, at and beyond which the loop has failed`,
            received: `${current} mA`,
            parameter: "milliamperes",
          });
        }
        const clipped = Math.min(Math.max(current, 4), highest);
        const value = low + (span * (clipped - 4)) / 16;
        const way: Step[] = [{ does: "given", value: current, type: "mA" }];
        if (clipped !== current) {
          way.push({ does: "replaced", value: clipped, type: "mA", note: "the end of what it measures" });
        }
        way.push({
          does: "line",
          of: [way.length - 1],
          value,
          type,
          by: span / 16,
          plus: low - span / 4,
          note: `4 to 20 mA are ${written}`,
          ...(assumed.length > 0 && { assumed }),
        });
        const measured = amplitudeIn(type, value, full.hertz);
        const own = { ...measured, assumed, state: stateOf(current), history: ownHistory(way.map(frozen)) };
        return convertAmplitude(Object.freeze(own), as, options) as LoopReading;
      },
      current(reading: string | Amplitude, options?: ConvertOptions) {
        const vibration = convertAmplitude(reading, type, options);
        const exact = inPlace({ parameter: "reading" }, () => finiteResult(4 + (16 * (vibration.value - low)) / span));
        const milliamperes = Math.min(Math.max(exact, lowest), highest);
        const way = madeOf([vibration], {
          does: "line",
          value: exact,
          type: "mA",
          by: 16 / span,
          plus: 4 - (16 * low) / span,
          note: `4 to 20 mA are ${written}`,
          ...(assumed.length > 0 && { assumed }),
        }) as Required<Made>;
        const state = worstState([way.state, stateOf(exact)]) as LoopState;
        const end = { does: "replaced", value: milliamperes, type: "mA", note: "the end of what it measures" } as const;
        const history = milliamperes === exact ? way.history : ownHistory([...way.history, Object.freeze(end)]);
        return Object.freeze({ milliamperes, state, assumed: way.assumed, history });
      },
      percent(milliamperes: number): number {
        return inPlace({ parameter: "milliamperes" }, () =>
          finiteResult(
            ((requireFinite(milliamperes, "a loop current in mA", { parameter: "milliamperes" }) - 4) / 16) * 100,
          ),
        );
      },
    });
  });
}
