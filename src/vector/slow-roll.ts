import { convertAmplitude } from "../amplitude/index";
import {
  inPlace,
  raised,
  requireKnownOptions,
  requirePositive,
  same,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Amplitude, exactAmplitude, format, significant } from "../reading/index";
import { vectorAnswer } from "./answer";
import { combined } from "./combined";
import { oneName } from "./names";
import { orderText, speedText } from "./texts";
import { twoVectors } from "./two-vectors";
import type { Vector, VectorAnswer } from "./vector";

/** What the compensation may be told. */
export interface SlowRollOptions {
  /** The limit that the reading will be held against, as a displacement such as `"50 um pp"`. */
  readonly limit?: string | Amplitude;
}

/** Part of the running speed above which a rotor may already answer to unbalance; common practice, no source. */
const SLOW = 0.1;

/** The part of the limit that API 610 lets run-out have; 6.9.4.9, clause and figures not checked against a printed copy. */
const SHARE = 0.25;

/** The most run-out that API 610 lets be taken off: 6.5 um (0.25 mil), of which the smaller stands here, in um pp. */
const MOST = 6.35;

const RULE =
  "API 610 lets 25 % of the limit or 6.5 um (0.25 mil) be taken off, whichever is less, in the works test alone";

/** How a history tells that slow roll was taken off. */
const NOTE = "slow roll at";

/** True for what slow roll was taken off; the history tells it of one that was put together from parts. */
function isCompensated({ slowRollSpeed, amplitude: { history = [] } }: Vector): boolean {
  return slowRollSpeed !== undefined || history.some(({ note }) => note?.startsWith(NOTE));
}

/** Refuses what is no slow roll of the reading. */
function requireSlowRoll(reading: Vector, slowRoll: Vector): void {
  for (const one of [reading, slowRoll]) {
    if (one.order !== 1) {
      throw new VeladisError("wrong-frequency", {
        expected: "vectors at 1x, at which slow roll is taken off",
        received: orderText(one),
      });
    }
    if (one.amplitude.quantity !== "displacement") {
      throw new VeladisError("wrong-quantity", {
        expected: "a displacement, as a proximity probe reads it",
        received: format(one.amplitude),
      });
    }
  }
  if (isCompensated(reading) || isCompensated(slowRoll)) {
    throw new VeladisError("out-of-range", {
      expected: "a reading and a slow roll as the probe read them: slow roll is taken off once",
      received: "one without its slow roll",
    });
  }
  if (slowRoll.speed < reading.speed && !same(slowRoll.speed, reading.speed)) return;
  throw new VeladisError("out-of-range", {
    expected: `a slow roll slower than the reading, which is at ${speedText(reading.speed)}`,
    received: speedText(slowRoll.speed),
  });
}

/** The limit in um pp, above zero. */
function limitIn({ limit }: SlowRollOptions): number | undefined {
  if (limit === undefined) return undefined;
  const amplitude = exactAmplitude(limit);
  if (amplitude.quantity !== "displacement") {
    throw new VeladisError("wrong-quantity", {
      expected: 'a limit of displacement, such as "50 um pp"',
      received: format(amplitude),
    });
  }
  return requirePositive(convertAmplitude(amplitude, "um pp").value, "a limit above zero");
}

/** What has to be known of the run-out that is taken off. */
function cautionsOf(reading: Vector, slowRoll: Vector, limit: number | undefined): string[] {
  const runOut = convertAmplitude(slowRoll.amplitude, "um pp").value;
  const most = limit === undefined ? MOST : Math.min(MOST, SHARE * limit);
  const texts = [
    `${RULE} (not checked against a printed copy): a machine in service is judged by the reading as it came`,
  ];
  if (runOut > raised(most)) {
    texts.push(
      `run-out of ${significant(runOut)} um pp is more than ${significant(most)} um pp, which that rule allows`,
    );
  } else if (limit === undefined) {
    texts.push("no limit was given: run-out was not held against 25 % of it");
  }
  if (slowRoll.speed > raised(SLOW * reading.speed)) {
    texts.push(
      `slow roll at ${speedText(slowRoll.speed)} is faster than a tenth of ${speedText(reading.speed)}: it may hold vibration beside run-out`,
    );
  }
  return texts;
}

/**
 * The 1x vector of a proximity probe less its slow-roll vector, which the same probe read while the shaft turned too slowly to
 * bend: what is left is vibration without the run-out of the surface. Both count their phases from one mark.
 *
 * `cautions` say what the answer is good for; `assumedFacts` what was not stated, such as the probe. `slowRollSpeed` stays
 * with the vector, also where it is written and read back, so that slow roll is not taken off it again.
 *
 * @param reading - at running speed, at 1x
 * @param slowRoll - at 1x of a lower speed, by the same probe
 * @throws {@link VeladisError} `out-of-range` for a slow roll that is not slower or was taken off before, two probes or two directions,
 *   `wrong-frequency` for another order than 1, `wrong-quantity` for all but displacement, `missing-fact` where one has no
 *   phase, `unknown-option`, and as {@link parseVector}
 * @example
 * ```ts
 * import { formatVector, slowRollCompensated } from "veladis/vector";
 *
 * const reading = "40 um pp ∠ 60° at 1x of 5400 r/min, probe 1Y";
 * const slowRoll = "6 um pp ∠ 150° at 1x of 300 r/min, probe 1Y";
 * const left = slowRollCompensated(reading, slowRoll, { limit: "40 um pp" });
 * formatVector(left); // => "40.4 um pp ∠ 51.5° at 1x of 5400 r/min, probe 1Y, slow roll taken off at 300 r/min"
 * left.cautions.length; // => 1
 * slowRollCompensated(reading, "6 um pp ∠ 150° at 1x of 300 r/min, probe 1X"); // throws out-of-range
 * ```
 */
export function slowRollCompensated(
  reading: string | Vector,
  slowRoll: string | Vector,
  options: SlowRollOptions = {},
): VectorAnswer {
  return withParameters({ options, reading, slowRoll }, () => {
    requireKnownOptions(
      options,
      { limit: true },
      { what: "an option of slow roll", form: 'options such as { limit: "50 um pp" }' },
    );
    const [running, slow] = twoVectors({ reading, slowRoll });
    requireSlowRoll(running, slow);
    const assumed = [...oneName(running.probe, slow.probe, "probe"), ...directionsOf(running, slow)];
    const limit = inPlace({ parameter: "options", option: "limit" }, () => limitIn(options));
    const answer = combined(running, slow, 0, `${NOTE} ${speedText(slow.speed)}`);
    return vectorAnswer({
      ...answer,
      // what only the reading names is its own still
      ...(running.probe !== undefined && { probe: running.probe }),
      ...(running.direction !== undefined && { direction: running.direction }),
      slowRollSpeed: slow.speed,
      assumedFacts: [...answer.assumedFacts, ...assumed],
      cautions: [...answer.cautions, ...cautionsOf(running, slow, limit)],
    });
  });
}

/** One probe has one direction: where the directions are named they have to agree, where not nothing more is assumed. */
function directionsOf(a: Vector, b: Vector): string[] {
  return a.direction === undefined || b.direction === undefined ? [] : oneName(a.direction, b.direction, "direction");
}
