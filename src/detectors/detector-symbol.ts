import { nearest, shown, text, VeladisError } from "../core/index";
import { type Detector, type DetectorEntry, detectors } from "./catalogue";

const bySpelling: ReadonlyMap<string, Detector> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.entries(detectors) as [Detector, DetectorEntry][]).flatMap(([symbol, detector]) =>
    [symbol, ...detector.spoken].map((spelling) => [spelling, symbol] as const),
  ),
);

/** The detector's symbol, or undefined when the spelling is none of a detector. */
export function findDetector(spelling: string): Detector | undefined {
  if (spelling.length > 32) return undefined;
  return bySpelling.get(spelling.trim().toLowerCase().replace(/[‐-–]/g, "-").replace(/\s+/g, " "));
}

/** The words that name no detector by themselves, nearest detectors first. */
export function nearestDetectors(word: string): string[] {
  return [...new Set(nearest(word, bySpelling.keys()).map((name) => bySpelling.get(name) as string))];
}

/**
 * The symbol of the detector that a text names.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax` or `unknown-detector`
 * @example
 * ```ts
 * import { detectorSymbol } from "veladis";
 *
 * detectorSymbol("peak-to-peak"); // => "pp"
 * detectorSymbol("RMS"); // => "rms"
 * ```
 */
export function detectorSymbol(spelling: string): Detector {
  const symbol = findDetector(text(spelling, "a detector"));
  if (symbol !== undefined) return symbol;
  throw new VeladisError("unknown-detector", {
    expected: "a detector",
    received: shown(spelling),
    didYouMean: nearestDetectors(spelling),
    allowed: Object.keys(detectors),
  });
}
