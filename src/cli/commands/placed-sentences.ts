import { frequency } from "../../frequency/index";
import { type Amplitude, readingText, writtenIn, writtenValue } from "../../reading/index";
import { namesPoints, type PointReading } from "../../severity/index";
import { splitPlace } from "../input/split-place";
import { pointsRead } from "../options/points-read";
import { type ConvertSettings, type NotedSentence, sentenceOf, typedLine } from "./convert-settings";

/** A reading of a line, with where it was taken. */
export interface Placed {
  readonly place: string;
  /** As it was written; of several points on a line, as it was read. */
  readonly written: string;
  sentence(): NotedSentence;
}

/** A reading as people write it: no digits that nobody noted. */
function plainText(reading: Amplitude): string {
  if (reading.history !== undefined) return readingText(reading, { digits: 3 });
  const at = reading.hertz === undefined ? "" : ` at ${reading.hertz} Hz`;
  return `${writtenValue(reading)} ${writtenIn(reading)}${at}`;
}

/** The points of one machine on one line: `DE-H 3.1, DE-V 2.2 mm/s rms`. */
function placedPoints(place: string, written: string, settings: ConvertSettings): Placed[] {
  const { at, source } = settings;
  const { text, state } = typedLine(written, settings);
  const points = pointsRead(text, source);
  return points.map(({ point, reading }: PointReading) => ({
    place: [place, point].filter((one) => one !== "").join(", "),
    written: plainText(reading),
    sentence: () => ({
      reading,
      written: "",
      targets: [],
      options: at === undefined ? {} : { at: frequency(at) },
      state,
    }),
  }));
}

/**
 * The readings of a line, each with its place: `place: reading`, or points of one machine with a reading each.
 *
 * @throws {@link VeladisError} as {@link splitPlace} and {@link pointsRead}; a reading alone refuses when its sentence is asked
 */
export function placedSentences(line: string, settings: ConvertSettings): readonly Placed[] {
  const [place, written] = splitPlace(line, (text) => sentenceOf(text, settings));
  if (namesPoints(written) && /\d/.test(written) && !/\sto\s|->|\u2192/i.test(written)) {
    return placedPoints(place, written, settings);
  }
  return [{ place, written, sentence: () => sentenceOf(written, settings) }];
}
