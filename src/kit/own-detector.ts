import {
  type ErrorPlace,
  frozen,
  requireFinite,
  requireKnownOptions,
  type Source,
  shown,
  VeladisError,
} from "../core/index";
import { requireFreeName, requireNameAndSource, requireWhole } from "./checked-name";

/** A detector of your own: its reading of a sine of peak 1, `num / den * pi^pi * sqrt(2)^rootTwo`, and of samples. */
export interface OwnDetector<Symbol extends string = string> {
  readonly symbol: Symbol;
  readonly num: number;
  readonly den: number;
  /** 0 if not given. */
  readonly pi?: number;
  /** 0 if not given. */
  readonly rootTwo?: number;
  /** Reading of a waveform: samples about their mean, in any one unit. */
  readonly ofSamples: (samples: ArrayLike<number>) => number;
  readonly name: string;
  readonly source: Source;
}

const keys = /* @__PURE__ */ frozen({
  symbol: true,
  num: true,
  den: true,
  pi: true,
  rootTwo: true,
  ofSamples: true,
  name: true,
  source: true,
});

/** How far the reading of a sampled sine may lie from the ratio. */
const NEAR = 1e-3;

/** Samples of 8 turns of a sine of peak 1. */
function sine(): Float64Array {
  return Float64Array.from({ length: 8192 }, (_, i) => Math.sin((2 * Math.PI * (i + 0.5)) / 1024));
}

const OF_SINE = "ofSamples of a sine of peak 1: a number";

/** What a function reads from a sine; an error of its own is a refusal of the detector. */
function readingOfSine(ofSamples: OwnDetector["ofSamples"]): number {
  try {
    return ofSamples(sine());
  } catch (error) {
    throw new VeladisError("out-of-range", {
      expected: OF_SINE,
      received: `an error that says ${shown(error instanceof Error ? error.message : String(error))}`,
      ...{ parameter: "detector", option: "ofSamples" },
    });
  }
}

function requirePower(power: number, what: string, place: ErrorPlace): number {
  if (Number.isInteger(power) && Math.abs(power) <= 8) return power;
  throw new VeladisError("out-of-range", {
    expected: `${what}: a whole number from -8 to 8`,
    received: shown(power),
    ...place,
  });
}

/**
 * A detector of your own, checked and frozen, for {@link toolkit}. Its function reads a sampled sine once: it must agree with
 * the ratio within a thousandth.
 *
 * @throws {@link VeladisError} `unknown-option`, `wrong-type`, `syntax`, `out-of-range` for a symbol that is taken, and for
 *   a ratio and a function that contradict each other
 * @example
 * ```ts
 * import { defineDetector } from "veladis/kit";
 *
 * const source = { title: "Hollowmere workshop sheet 4", provenance: "memory" } as const;
 * const squares = (samples: ArrayLike<number>) => Array.from(samples).reduce((sum, x) => sum + x * x, 0) / samples.length;
 * const crest = { num: 1, den: 1, rootTwo: 1, name: "twice the RMS value", source };
 * defineDetector({ symbol: "twice", ...crest, ofSamples: (samples) => 2 * Math.sqrt(squares(samples)) }).symbol; // => "twice"
 * defineDetector({ symbol: "twice", ...crest, ofSamples: (samples) => Math.sqrt(squares(samples)) }); // throws out-of-range
 * ```
 */
export function defineDetector<const Symbol extends string>(detector: OwnDetector<Symbol>): OwnDetector<Symbol> {
  requireKnownOptions(detector, keys, {
    what: "a part of a detector",
    form: "a detector with symbol, num, den, ofSamples, name and source",
    place: { parameter: "detector" },
  });
  const { symbol, num, den, pi = 0, rootTwo = 0, ofSamples, name, source } = detector;
  const at = (option: keyof OwnDetector) => ({ parameter: "detector", option });
  requireFreeName(symbol, "the symbol of a detector", at("symbol"));
  const powers =
    Math.PI ** requirePower(pi, "pi", at("pi")) * Math.SQRT2 ** requirePower(rootTwo, "rootTwo", at("rootTwo"));
  const ratio = (requireWhole(num, "num", at("num")) / requireWhole(den, "den", at("den"))) * powers;
  if (typeof ofSamples !== "function") {
    throw new VeladisError("wrong-type", {
      ...{ expected: "ofSamples: a function of samples", received: shown(ofSamples) },
      ...at("ofSamples"),
    });
  }
  const read = requireFinite(readingOfSine(ofSamples), OF_SINE, at("ofSamples"));
  if (!(Math.abs(read - ratio) <= NEAR * ratio)) {
    throw new VeladisError("out-of-range", {
      expected: `ofSamples of a sine of peak 1 that agrees with num, den, pi and rootTwo: ${ratio}`,
      received: shown(read),
      ...at("ofSamples"),
    });
  }
  requireNameAndSource(detector, "detector");
  return frozen({ symbol, num, den, pi, rootTwo, ofSamples, name, source: { ...source } });
}
