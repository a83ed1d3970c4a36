import { same, VeladisError } from "../core/index";
import {
  type Amplitude,
  assumedText,
  format,
  linearOf,
  madeOf,
  parsedType,
  worstState,
  writtenIn,
  writtenValue,
} from "../reading/index";
import { unitFactor } from "../units/index";
import { scaledReading } from "./combined";
import { inType, operands } from "./operands";
import { decibelsText, type LevelDifference } from "./value";

/** Refuses two levels with two references: the difference of their numbers is none of the vibrations. */
function requireOneReference(a: Amplitude, b: Amplitude): void {
  const [one, other] = [parsedType(writtenIn(a)), parsedType(writtenIn(b))];
  if (same(one.reference, other.reference * unitFactor(other.unit, one.unit))) return;
  throw new VeladisError("wrong-type", {
    expected: "two levels with one reference to subtract; convert one of them first, on a line of its own",
    received: `${format(a)} and ${format(b)}`,
  });
}

/** How far one level lies above another with the same reference, with what both brought along. */
export function levelDifference(a: Amplitude, b: Amplitude): LevelDifference {
  const [x, y] = operands([a, b], "subtract") as [Amplitude, Amplitude];
  requireOneReference(a, b);
  const decibels = writtenValue(a) - writtenValue(b);
  const note = `a difference of ${decibelsText(decibels)}`;
  const way = madeOf([y, x], { does: "compare", by: x.value, value: x.value / y.value, type: "", note });
  return Object.freeze({ decibels, ...way });
}

/** Refuses two levels to add: 95 dB and 95 dB are 98.0 dB where they are uncorrelated, and never 190 dB. */
export function refuseSumOfLevels(a: Amplitude, b: Amplitude): never {
  operands([a, b], "add");
  throw new VeladisError("wrong-type", {
    expected:
      "levels put together by rss, as in rss(a, b), which takes them as uncorrelated; to add them in phase, convert both to a linear unit first, on lines of their own",
    received: `${format(a)} + ${format(b)}`,
  });
}

/** A reading raised by a number of decibels, written as it was before. */
export function raisedBy(reading: Amplitude, { decibels, state, ...way }: LevelDifference, sign: 1 | -1): Amplitude {
  const by = linearOf(sign * decibels, 1);
  const told = sign * decibels;
  const words = [`${told < 0 ? "" : "+"}${decibelsText(told)}`, assumedText(way)].filter((one) => one !== "");
  const { assumed = [] } = way;
  const raised = scaledReading(reading, { by, note: words.join(" "), ...(assumed.length > 0 && { assumed }) });
  const worst = worstState([reading.state, state]);
  return inType(Object.freeze({ ...raised, ...(worst !== undefined && { state: worst }) }), writtenIn(reading));
}
