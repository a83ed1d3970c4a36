import { shown, VeladisError } from "../../core/index";
import { type ParsedType, parsedType } from "../../reading/index";
import { requireHeadingAgrees, typeTold } from "../delimited/heading-agrees";
import { headingSays } from "../delimited/heading-says";
import type { WrittenAs } from "../delimited/written-as";

/** The reading type that a heading says, as in `velocity, mm/s rms`; undefined where it leaves something open. */
function typeIn(heading: string): string | undefined {
  const says = headingSays(heading);
  const level = says.find(({ level }) => level !== undefined && level !== "dB")?.level;
  if (level !== undefined) return level;
  const unit = says.find((one) => one.unit !== undefined)?.unit;
  const detectors = new Set(says.flatMap(({ detector }) => (detector === undefined ? [] : [detector])));
  return unit === undefined || detectors.size !== 1 ? undefined : `${unit} ${[...detectors][0]}`;
}

/**
 * What the lines of a column are written in, unit and detector: as it is told, else as the heading says.
 *
 * @throws {@link VeladisError} `missing-option` where neither says both, `unknown-option` where they contradict each other
 */
export function lineType(
  headings: readonly string[],
  index: number,
  told: string | undefined,
  written: WrittenAs,
): ParsedType {
  if (told !== undefined) {
    const type = parsedType(told);
    requireHeadingAgrees(headings, index, typeTold(`--unit ${shown(told)}`, type.type), written);
    return type;
  }
  const heading = (headings[index] as string).trim();
  const type = written.fileUnits === "none" ? undefined : typeIn(heading);
  if (type !== undefined) return parsedType(type);
  throw new VeladisError("missing-option", {
    expected: '--unit such as "mm/s rms", unit and detector of the lines: a peak is 1.414 times its RMS value',
    received: `the heading ${shown(heading)}, which does not say both`,
  });
}
