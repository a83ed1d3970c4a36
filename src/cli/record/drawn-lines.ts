import { convertAmplitude } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { type AmplitudeType, amplitudeIn, parsedType } from "../../reading/index";
import type { Band, ListedLine, Spectrum } from "../../signal/index";

/** The lines of a file as a picture takes them: line k stands at k times the resolution. */
export interface DrawnLines {
  readonly spectrum: Pick<Spectrum, "unit" | "detector" | "resolution" | "values">;
  /** Frequencies of the frame, in hertz. */
  readonly frequency: readonly [low: number, high: number];
}

/** How far the first line may lie from a whole multiple of the spacing, as part of it: room for rounding. */
const ROUNDED = 0.1;

/**
 * The lines of a spectrum from 0 Hz on, each in another type, and the part of them within a band.
 *
 * @param from - what the lines are in
 * @param as - what they are drawn in
 * @throws {@link VeladisError} `unknown-option` for lines that stand beside the multiples of their spacing
 */
export function drawnLines(
  lines: readonly ListedLine[],
  {
    from,
    as,
    spacing,
    band,
  }: { readonly from: AmplitudeType; readonly as: AmplitudeType; readonly spacing: number; readonly band: Band },
): DrawnLines {
  const [first, last] = [(lines[0] as ListedLine)[0], (lines[lines.length - 1] as ListedLine)[0]];
  const before = Math.round(first / spacing);
  if (Math.abs(first / spacing - before) > ROUNDED) {
    throw new VeladisError("unknown-option", {
      expected: "lines at whole multiples of their spacing, to be drawn by --chart or --plot",
      received: `lines ${Number(spacing.toPrecision(6))} Hz apart that begin at ${first} Hz`,
    });
  }
  const values = new Float64Array(before + lines.length);
  for (const [k, [hertz, size]] of lines.entries()) {
    // what stands still has no other quantity, and none of it is drawn
    if (hertz > 0) values[before + k] = convertAmplitude(amplitudeIn(from, size, hertz), as).value;
  }
  const { unit, detector } = parsedType(as);
  return {
    spectrum: { unit, detector, resolution: last / (values.length - 1), values },
    frequency: [Math.max(band[0], first), Math.min(band[1], last)],
  };
}
