import {
  FLOAT_NOISE,
  finiteResult,
  inPlace,
  numeralAndUnit,
  parseNumeral,
  requireGiven,
  requireKnownOptions,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import type { Amplitude, Assumption } from "../reading/index";
import { unitSymbol, units } from "../units/index";
import { convertAmplitude } from "./convert-amplitude";
import { directVolts, linearRange } from "./direct-voltage";
import { limitWarnings, sensitivityWarnings } from "./gap-warnings";
import { type ProbeLength, probeLength, voltsText } from "./probe-length";
import { sensor } from "./sensor";

/** Which way the shaft has moved. */
export type ProbeDirection = "away from the probe" | "towards the probe" | "not moved";

/** What {@link probeGap} is told beside the gap voltage. */
export interface ProbeGapOptions {
  /** Sensitivity of probe, cable and driver as one, e.g. `"200 mV/mil"` or `"7.87 V/mm"`. */
  readonly sensitivity: string;
  /** Linear range, from its calibration, e.g. `"-2 to -18 V"`. */
  readonly range: string;
  /** The gap voltage with the machine cold and stopped, from which the movement counts, e.g. `"-10.4 V"`. */
  readonly cold?: string;
  /** Vibration about the gap, e.g. `"60 um pp"`: whether it stays within the linear range. */
  readonly vibration?: string | Amplitude;
  /** The movement, either way, that the maker or the site allows, e.g. `"10 mil"`. */
  readonly limit?: string;
}

/** What a gap voltage says of a shaft. */
export interface ProbeGap {
  readonly volts: number;
  /** mV per um. */
  readonly sensitivity: number;
  /** The linear range in volts, the nearer gap first. */
  readonly range: readonly [near: number, far: number];
  /** Where in the linear range the gap lies: 0 at the near end, 100 at the far. */
  readonly percent: number;
  /** How far the shaft may move towards the probe, and away from it, within the linear range. */
  readonly room: { readonly towards: ProbeLength; readonly away: ProbeLength };
  /** Movement since the cold gap; null without one. */
  readonly movement: (ProbeLength & { readonly cold: number; readonly direction: ProbeDirection }) | null;
  /** The lowest and highest gap voltage that the vibration takes the signal to, nearest first; null without a vibration. */
  readonly swing: { readonly volts: readonly [near: number, far: number]; readonly inRange: boolean } | null;
  /** Whether the movement reaches the limit; null without a limit: nothing is judged then. */
  readonly reached: boolean | null;
  /** Of a vibration, or a limit, that the linear range does not hold, and of a sensitivity far from the usual. */
  readonly warnings: readonly string[];
  readonly assumed: readonly Assumption[];
  /** What was taken for granted of the probe, in words. */
  readonly assumedFacts: readonly string[];
}

const keys: Readonly<Record<keyof ProbeGapOptions, true>> = /* @__PURE__ */ Object.freeze({
  sensitivity: true,
  range: true,
  cold: true,
  vibration: true,
  limit: true,
});

const assumedFacts: readonly string[] = /* @__PURE__ */ Object.freeze([
  "a higher voltage, whatever its sign, is a wider gap (common practice, no source)",
  "sensitivity and linear range are of this probe, cable, driver and shaft material as one",
]);

/** A length in um, `"10 mil"`; a movement has no detector. */
function lengthUm(written: string): number {
  const form = 'a movement such as "10 mil" or "250 um"';
  const [digits, rest] = numeralAndUnit(written, form);
  const { quantity, num, den } = units[unitSymbol(rest)];
  if (quantity !== "displacement")
    throw new VeladisError("wrong-quantity", { expected: form, received: shown(written) });
  return requirePositive(finiteResult((parseNumeral(digits, form) * num * 1e6) / den), `${form} above zero`);
}

/** A sensitivity per length, in mV/um. */
function sensitivityPerUm(written: string): number {
  const form = 'a sensitivity per length such as "200 mV/mil"';
  const probe = sensor(requireGiven(written, form));
  if (units[probe.unit].quantity === "displacement") return probe.sensitivity("mV/um");
  throw new VeladisError("wrong-quantity", { expected: form, received: shown(written) });
}

/** The voltage itself if the linear range holds it. */
function requireInRange(volts: number, [near, far]: readonly [number, number], written: string, what: string): number {
  const range = `${voltsText(near)} to ${voltsText(far)}`;
  if (volts * far < 0)
    throw new VeladisError("out-of-range", {
      expected: `${what} on the side of zero of its linear range, ${range}`,
      received: shown(written),
    });
  const size = Math.abs(volts);
  if (size >= Math.abs(near) * (1 - FLOAT_NOISE) && size <= Math.abs(far) * (1 + FLOAT_NOISE)) return volts;
  throw new VeladisError("out-of-range", {
    expected: `${what} within the linear range of ${range}: outside it the sensitivity does not hold, and probe, cable, driver and target are to be looked at first`,
    received: shown(written),
  });
}

function directionOf(away: number): ProbeDirection {
  if (away === 0) return "not moved";
  return away > 0 ? "away from the probe" : "towards the probe";
}

/**
 * What the gap voltage of a proximity probe says: where in its linear range the shaft stands, and how far it has moved since
 * the cold gap, along the axis of the probe. Without a limit nothing is judged.
 *
 * Usual sensitivities are 200 mV/mil, 7.87 mV/um, within 5 % (API 670, from memory); one more than five times off is warned of. The gap voltage is negative where the
 * driver has a negative supply; a voltage is refused that has another sign than the linear range, or lies outside it.
 *
 * @param gap - the direct voltage with its sign, e.g. `"-9.8 V"`
 * @throws {@link VeladisError} `out-of-range` for voltages outside the linear range, `missing-option`, `missing-fact` for a
 *   limit without a cold gap, `wrong-quantity`, `syntax`, and as {@link convertAmplitude} for the vibration
 * @example
 * ```ts
 * import { probeGap } from "veladis/sensor";
 *
 * const { movement, percent, reached } = probeGap("-9.8 V", {
 *   sensitivity: "200 mV/mil",
 *   range: "-2 to -18 V",
 *   cold: "-10.4 V",
 * });
 * movement?.mil.toFixed(2); // => "3.00"
 * movement?.um.toFixed(1); // => "76.2"
 * movement?.direction; // => "towards the probe"
 * percent.toFixed(1); // => "48.8"
 * reached; // => null
 * probeGap("-19.5 V", { sensitivity: "200 mV/mil", range: "-2 to -18 V" }); // throws out-of-range
 * ```
 */
export function probeGap(gap: string, options: ProbeGapOptions): ProbeGap {
  return withParameters({ gap, options }, () => {
    const given = requireKnownOptions(options, keys, {
      what: "an option of a probe gap",
      form: 'options such as { sensitivity: "200 mV/mil", range: "-2 to -18 V" }',
    });
    const of = <Name extends keyof ProbeGapOptions>(option: Name): { parameter: string; option: Name } => ({
      parameter: "options",
      option,
    });
    const written = requireGiven(gap, 'a gap voltage such as "-9.8 V"', { parameter: "gap" });
    const perUm = inPlace(of("sensitivity"), () => sensitivityPerUm(given.sensitivity));
    const range = inPlace(of("range"), () =>
      linearRange(
        requireGiven(given.range, 'the linear range of the probe, from its calibration, such as "-2 to -18 V"'),
      ),
    );
    const volts = inPlace({ parameter: "gap" }, () =>
      requireInRange(directVolts(written), range, written, "a gap voltage"),
    );
    const { cold: coldText, limit, vibration } = given;
    const cold =
      coldText === undefined
        ? undefined
        : inPlace(of("cold"), () => requireInRange(directVolts(coldText), range, coldText, "a cold gap voltage"));
    if (limit !== undefined && cold === undefined)
      throw new VeladisError("missing-fact", {
        expected: "the cold gap voltage beside a limit of movement, since the movement counts from there",
        received: "a limit alone",
        ...of("cold"),
      });
    const um = (from: number, to: number): number => finiteResult((1000 * (Math.abs(to) - Math.abs(from))) / perUm);
    const [near, far] = range;
    const away = cold === undefined ? undefined : um(cold, volts);
    const most = limit === undefined ? undefined : inPlace(of("limit"), () => lengthUm(limit));
    const moving =
      vibration === undefined ? undefined : inPlace(of("vibration"), () => convertAmplitude(vibration, "um pp"));
    const half = moving === undefined ? undefined : finiteResult((moving.value * perUm) / 2000);
    const sign = Math.sign(far);
    const swing =
      half === undefined
        ? null
        : Object.freeze({
            volts: Object.freeze([volts - sign * half, volts + sign * half] as const),
            inRange: Math.abs(volts) - half >= Math.abs(near) && Math.abs(volts) + half <= Math.abs(far),
          });
    const warnings = [
      ...sensitivityWarnings(perUm),
      ...(cold === undefined ? [] : limitWarnings(most, { towards: um(near, cold), away: um(cold, far) })),
    ];
    if (swing?.inRange === false)
      warnings.push(
        `the vibration takes the signal to ${swing.volts.map(voltsText).join(" and ")}, out of the linear range of ${voltsText(near)} to ${voltsText(far)}: its peaks are not read right`,
      );
    return Object.freeze({
      volts,
      sensitivity: perUm,
      range,
      percent: (100 * (Math.abs(volts) - Math.abs(near))) / (Math.abs(far) - Math.abs(near)),
      room: Object.freeze({ towards: probeLength(um(near, volts)), away: probeLength(um(volts, far)) }),
      movement:
        away === undefined || cold === undefined
          ? null
          : Object.freeze({ ...probeLength(Math.abs(away)), cold, direction: directionOf(away) }),
      swing,
      reached: most === undefined || away === undefined ? null : Math.abs(away) >= most * (1 - FLOAT_NOISE),
      warnings: Object.freeze(warnings),
      assumed: moving?.assumed ?? [],
      assumedFacts,
    });
  });
}
