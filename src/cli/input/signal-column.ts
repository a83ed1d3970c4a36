import { currentLoop, isSignal, type SignalSource, sensor, signalReading, wayOfSignal } from "../../amplitude/index";
import { shown, VeladisError } from "../../core/index";
import { isClipped, type LoopState, parsedType } from "../../reading/index";
import type { ColumnTold } from "../delimited/heading-agrees";

/** A column whose numbers are a signal, and how each becomes a vibration. */
export interface SignalColumn {
  /** What its numbers are, as it was told: `mV pk`, `mA`. */
  readonly from: string;
  /** The reading type of the vibrations. */
  readonly type: string;
  /** What is told of its heading. */
  readonly told: ColumnTold;
  /** The same in words: `mA of 0 to 20 mm/s rms`. */
  readonly words: string;
  /** Whether the signal is the current of a loop, which fails beyond its limits. */
  readonly isLoop: boolean;
  /**
   * The vibration of a number.
   *
   * @throws {@link VeladisError} `sensor-fault` for a current at which the loop has failed
   */
  vibration(number: number): { readonly value: number; readonly state?: LoopState };
}

/** A number with which every signal is one: 12 mA is the middle of a loop. */
const SAMPLE = 12;

/** Refuses a way from a signal to a vibration where the column is none, or needs the other. */
function requireUsed(from: string, source: SignalSource): void {
  const way = wayOfSignal(`${SAMPLE} ${from}`);
  const other = (Object.keys(source) as (keyof SignalSource)[]).find((one) => one !== way);
  if (other === undefined) return;
  throw new VeladisError("unknown-option", {
    expected: `a column in ${other === "sensor" ? 'volts, such as --from "mV pk",' : "mA or per cent, such as --from mA,"} for --${other}`,
    received: `--from ${shown(from)}`,
    option: other,
  });
}

/**
 * How the numbers of a column become vibrations; undefined where they are vibrations themselves.
 *
 * @param from - what they are written in: `mV pk`, `mA`, `%`, with `by 100 mV/g` or `of 0 to 20 mm/s rms` behind it or not
 * @throws {@link VeladisError} `unknown-option` for a sensor or a loop that plays no part, and as {@link signalReading}
 */
export function signalColumn(from: string, source: SignalSource): SignalColumn | undefined {
  requireUsed(from, source);
  if (!isSignal(`${SAMPLE} ${from}`)) return undefined;
  if (/\sat\s|@/i.test(from)) {
    throw new VeladisError("syntax", {
      expected: "a signal without its frequency, which stands in --at",
      received: shown(from),
      option: "from",
    });
  }
  // holds all of it against the rules once
  const { unit, detector } = signalReading(`${SAMPLE} ${from}`, source);
  const type = `${unit} ${detector}`;
  const [plain = from, said] = from.trim().split(/\s+(?:by|of)\s+/i);
  const [signal = plain] = plain.trim().split(/\s+/);
  const by = `--from ${shown(from)}`;
  if (wayOfSignal(`${SAMPLE} ${from}`) === "sensor") {
    const way = said ?? (source.sensor as string);
    const per = sensor(way).voltage(`1 ${type}`, `${signal === "V" ? "V" : "mV"} ${parsedType(type).detector}`).value;
    const scale = /^[u\u00b5\u03bc]V$/.test(signal) ? per * 1000 : per;
    return {
      ...{ from, type, isLoop: false, words: `${plain} by ${way}` },
      told: { by, signal, detector },
      vibration: (number) => ({ value: number / scale }),
    };
  }
  const way = said ?? (source.loop as string);
  const loop = currentLoop(way);
  const isShare = signal !== "mA";
  return {
    ...{ from, type, isLoop: true, words: `${plain} of ${way}` },
    told: { by, signal },
    vibration: (number) => loop.reading(isShare ? 4 + (16 * number) / 100 : number),
  };
}

/**
 * Gives a reading back that its loop can measure; beyond its range it is the end of what the loop measures, and no vibration.
 *
 * @param written - the signal, for the message
 * @param what - what it is
 * @throws {@link VeladisError} `sensor-fault`
 */
export function requireMeasured<R extends { readonly state?: LoopState }>(
  reading: R,
  written: string,
  what = "a signal",
): R {
  if (!isClipped(reading.state)) return reading;
  throw new VeladisError("sensor-fault", {
    expected: `${what} within the range of its loop`,
    received: `${written}, ${reading.state}`,
  });
}

/**
 * The vibration of a number that its loop can measure.
 *
 * @throws {@link VeladisError} `sensor-fault` where the loop has failed, and beyond its range
 */
export function measured(column: SignalColumn, number: number): number {
  return requireMeasured(column.vibration(number), `${number} ${column.words}`).value;
}
