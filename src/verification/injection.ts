import {
  inPlace,
  parseNumeral,
  requireChoice,
  requireKnownKeys,
  requirePositive,
  requireText,
  shown,
  splitNumeral,
  VeladisError,
} from "../core/index";
import type { BenchSettings } from "./bench-settings";

/** How a signal is injected in the place of a sensor or of a transmitter. */
export interface Injection {
  /** Milliamperes into the loop of the settings, or millivolts in the place of their sensor. */
  readonly inject: "mA" | "mV";
  /** The smallest step of the source, e.g. `"0.01 mA"` or `"0.1 mV"`; 0.01 mA, or three digits of mV, if not given. */
  readonly resolution?: string;
  /**
   * Uncertainty of the source: `"0.2 % (k=2)"` of the signal, or of a current `"0.02 mA (k=2)"`; an amount such as
   * `"0.05 mm/s rms"` is of the level that it stands for.
   */
  readonly uncertainty?: string;
  /** What the trip moves in the end, e.g. `"circuit breaker of the fan"`. */
  readonly finalElement?: string;
}

const keys: Readonly<Record<keyof Injection, true>> = /* @__PURE__ */ Object.freeze({
  inject: true,
  resolution: true,
  uncertainty: true,
  finalElement: true,
});

/** The way of each signal to a level. */
const ways = { mA: "loop", mV: "sensor" } as const satisfies Record<Injection["inject"], keyof BenchSettings>;

/** The smallest step of a source in its own unit. */
function resolutionIn(unit: Injection["inject"], resolution: string | undefined): number | undefined {
  if (resolution === undefined) return unit === "mA" ? 0.01 : undefined;
  const expected = `a resolution of the source in ${unit} such as "${unit === "mA" ? "0.01 mA" : "0.1 mV"}"`;
  const [digits, own] = splitNumeral(requireText(resolution, expected));
  if (digits === "" || own.trim() !== unit) {
    throw new VeladisError("syntax", { expected, received: shown(resolution), option: "resolution" });
  }
  return requirePositive(parseNumeral(digits), expected, { option: "resolution" });
}

/** An injection as it is done: the unit of the signal, what makes a level of it, and its smallest step. */
export function injectionWay(injection: Injection, settings: BenchSettings) {
  const place = { parameter: "injection" };
  const { inject, resolution, finalElement } = inPlace(place, () =>
    requireKnownKeys(injection, keys, "a part of an injection"),
  );
  requireChoice(inject, Object.keys(ways), "a signal to inject", { ...place, option: "inject" });
  if (finalElement !== undefined) {
    requireText(finalElement, "what the trip moves in the end", { ...place, option: "finalElement" });
  }
  const way = settings[ways[inject]];
  if (way === undefined) {
    throw new VeladisError("missing-option", {
      expected:
        inject === "mA"
          ? 'the range of the loop to inject into, such as "0 to 20 mm/s rms"'
          : 'the sensitivity of the sensor in whose place millivolts are injected, such as "100 mV/g"',
      received: "nothing",
      parameter: "settings",
      option: ways[inject],
    });
  }
  return { inject, way, step: inPlace({ ...place, option: "resolution" }, () => resolutionIn(inject, resolution)) };
}
