import { requireText, symbolsByName, unknownName, type VeladisError } from "../core/index";
import { type Detector, detectors } from "./catalogue";

const bySpelling = /* @__PURE__ */ symbolsByName(detectors, true);

/** The detector's symbol, or undefined when the spelling is none of a detector. */
export function findDetector(spelling: string): Detector | undefined {
  return bySpelling().get(
    spelling
      .trim()
      .toLowerCase()
      .replace("zero", "0")
      .replace(/peak/g, "pk")
      .replace(/(?<=\w)[-‐-–\s./]+(?=\w)|\.$/g, ""),
  );
}

/** The error for a text that names no detector. */
export function unknownDetector(spelling: string): VeladisError {
  return unknownName("unknown-detector", "a detector", spelling, [bySpelling(), detectors]);
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
  const symbol = findDetector(requireText(spelling, "a detector", { parameter: "spelling" }));
  if (symbol === undefined) throw unknownDetector(spelling);
  return symbol;
}
