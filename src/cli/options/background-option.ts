import { isSignal, type SignalSource, signalReading } from "../../amplitude/index";
import { uncertainPoints } from "../../conformity/index";
import { inPlace, shown } from "../../core/index";
import { type Amplitude, format, hasPlusMinus, parseAmplitude } from "../../reading/index";
import { type BackgroundOfPoints, namesPoints, type PointsVerdict, type Verdict } from "../../severity/index";
import { formatUncertain, parseUncertain, uncertaintyOf } from "../../uncertainty/index";
import { requireMeasured } from "../input/signal-column";
import { hasSignalPoint, pointsRead } from "./points-read";

/** A reading with the machine stopped, or one a point, and what is to be told of how it was taken. */
export interface Background {
  readonly background: BackgroundOfPoints | undefined;
  readonly told: readonly string[];
}

/** The largest that a reading may be within its uncertainty: above that nothing is asked of the background. */
function upperEnd(reading: Amplitude): Amplitude {
  const { value, expanded, interval, type } = uncertaintyOf(reading);
  const at = reading.hertz === undefined ? "" : ` at ${reading.hertz} Hz`;
  return parseAmplitude(`${Math.max(interval[1], value + expanded)} ${type}${at}`);
}

function toldOf(reading: Amplitude, upper: Amplitude): string {
  return `background ${formatUncertain(reading)}: taken at the upper end of its interval, ${format(upper)}`;
}

/** Refuses a reading at rest beyond the range of its loop: it is the end of what the loop measures, not the background. */
function requireRest(reading: Amplitude, written: string): Amplitude {
  return requireMeasured(reading, shown(written), "a reading with the machine stopped");
}

/**
 * The reading with the machine stopped that a text says, also as a signal.
 *
 * @throws {@link VeladisError} `sensor-fault` beyond the range of a loop, and as {@link signalReading} and {@link parseAmplitude}
 */
export function readingAtRest(text: string, source: SignalSource): Amplitude {
  return isSignal(text) ? requireRest(signalReading(text, source), text) : parseAmplitude(text);
}

/**
 * The reading with the machine stopped as the option states it. One with ± is taken at the upper end of its interval, so
 * that what is judged stands out from all that it may be. A signal is turned into its vibration.
 */
export function backgroundOption(text: string | undefined, source: SignalSource = {}): Background {
  if (text !== undefined && isSignal(text)) {
    return { background: inPlace({ option: "background" }, () => readingAtRest(text, source)), told: [] };
  }
  if (text !== undefined && namesPoints(text) && hasSignalPoint(text)) {
    const points = pointsRead(text, source);
    inPlace({ option: "background" }, () =>
      points.map(({ point, reading }) => requireRest(reading, `${text}: ${point}`)),
    );
    return { background: points, told: [] };
  }
  if (text === undefined || !hasPlusMinus(text)) return { background: text, told: [] };
  if (!namesPoints(text)) {
    const reading = parseUncertain(text);
    const background = upperEnd(reading);
    return { background, told: [toldOf(reading, background)] };
  }
  const points = uncertainPoints(text).map(({ point, reading }) => ({
    point,
    reading,
    upper: reading.history === undefined ? reading : upperEnd(reading),
  }));
  return {
    background: points.map(({ point, upper }) => ({ point, reading: upper })),
    told: points
      .filter(({ reading, upper }) => upper !== reading)
      .map((one) => `${one.point}: ${toldOf(one.reading, one.upper)}`),
  };
}

/** A verdict with what is to be told of the reading at rest in front of its cautions. */
export function withTold(verdict: Verdict, told: readonly string[]): Verdict {
  return told.length === 0 ? verdict : { ...verdict, cautions: [...told, ...verdict.cautions] };
}

/** The same of several points, of each. */
export function pointsWithTold(answer: PointsVerdict, told: readonly string[]): PointsVerdict {
  if (told.length === 0) return answer;
  const points = answer.points.map((one) => ({ ...one, verdict: withTold(one.verdict, told) }));
  const governing = points[answer.points.indexOf(answer.governing)] ?? answer.governing;
  return { ...answer, governing, points };
}
