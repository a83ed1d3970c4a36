import { finiteResult } from "../core/index";
import { isFailSafe, relayNow } from "../device/index";
import type { BenchSettings } from "./bench-settings";

/** The step that proves the trip and its delay. */
export const TAKE_TIME = "raise to above the threshold and take the time";

/** One step of a bench test before it is put to a frequency. */
export interface BenchMove {
  readonly what: string;
  /** Level over the threshold; null for a step without vibration. */
  readonly share: number | null;
  readonly expect: string;
  /** A step that only checks the reading, repeated at every frequency. */
  readonly reading?: true;
}

/** The numbers that the moves are made of. */
export interface BenchNumbers {
  /** Tolerance of the device as a share of the threshold, below 1. */
  readonly tolerance: number;
  /** Expanded uncertainty of the shaker as a share of the threshold; 0 where it is not stated. */
  readonly uncertainty: number;
  /** Share of the level that the device nominally reads at this frequency. */
  readonly response: number;
  readonly resetShare: number;
  /** The one level of the shaker as a share of the threshold; undefined where it can be set. */
  readonly own: number | undefined;
  readonly threshold: string;
  readonly reset: string;
  /** A share of the threshold as a level. */
  readonly text: (share: number) => string;
  /** The tolerance as it was stated. */
  readonly within: string;
}

/** Position of the contact in words; empty when the relay is not stated. */
function contactText({ contact, coil }: BenchSettings, output: "healthy" | "tripped" | "without power"): string {
  if (contact === undefined || coil === undefined) return "";
  return `, contact ${relayNow({ contact, coil }, output === "tripped", output !== "without power").contact}`;
}

/** What the output does at the one level of a shaker. */
function outputAt(own: number, numbers: BenchNumbers): string {
  const { over, under } = sureLevels(1, numbers);
  if (own <= under) return "no trip";
  return own >= over ? "it trips after the delay" : "so near the threshold that it may trip or not";
}

function readingMoves(numbers: BenchNumbers): BenchMove[] {
  const { own } = numbers;
  if (own !== undefined) {
    return [
      {
        what: "reading at the one level of the shaker",
        share: own,
        expect: `the device shows ${numbers.text(own * numbers.response)} within ${numbers.within}; ${outputAt(own, numbers)}`,
        reading: true as const,
      },
    ];
  }
  return [0.25, 0.5, 0.75].map((share) => ({
    what: `reading at ${share * 100} % of the threshold`,
    share,
    expect: `the device shows ${numbers.text(share * numbers.response)} within ${numbers.within}; no trip`,
    reading: true as const,
  }));
}

/**
 * The level at which a device within its tolerance surely reads at least a share of the threshold, and the one at which it
 * surely reads less, as far as the shaker is known.
 */
function sureLevels(share: number, { tolerance, uncertainty, response }: BenchNumbers) {
  const level = share / response;
  const off = (1 - tolerance) * (1 - uncertainty);
  return {
    over: finiteResult(level / off),
    under: level * off,
  };
}

/** A level of this share or more: the one of the shaker, where that is enough. */
function atLeast(share: number, { own }: BenchNumbers): number {
  return own !== undefined && own >= share ? own : share;
}

/** A level below the reset level; a shaker of one level is switched off for it. */
function belowReset(share: number, { own }: BenchNumbers): Pick<BenchMove, "what" | "share"> {
  return own === undefined
    ? { what: "lower the level to below the reset level", share }
    : { what: "switch the shaker off, which is below the reset level", share: null };
}

/** Steps for reset and latch, from a tripped output. */
function resetMoves(settings: BenchSettings, numbers: BenchNumbers): BenchMove[] {
  const { resetShare, reset, response } = numbers;
  const { latching, offDelay = 0 } = settings;
  const healthy = contactText(settings, "healthy");
  const tripped = contactText(settings, "tripped");
  const { over, under } = sureLevels(resetShare, numbers);
  const up = atLeast(sureLevels(1, numbers).over, numbers);
  const below = belowReset(under, numbers);
  // with a hysteresis this small, a level that is surely above the reset level is no longer below the threshold
  const proves = over * response < 1;
  const held = `the output stays set${tripped}: the level is not below the reset level of ${reset}`;
  const heldMove = (title: string): BenchMove =>
    proves
      ? { what: title, share: over, expect: held }
      : {
          what: "lower the level in small steps and note where the output clears or may be reset",
          share: null,
          expect: `a level between threshold and reset level of ${reset} cannot be proven: the hysteresis is no larger than what device and shaker may be off; hold the level noted against the one at which the output set`,
        };
  if (latching) {
    return [
      { what: "try to reset by hand while the level is up", share: up, expect: "the reset is refused" },
      heldMove("lower the level to just above the reset level and try to reset"),
      { ...below, expect: `the output stays latched${tripped}` },
      { what: "reset by hand", share: below.share, expect: `the output clears${healthy}` },
    ];
  }
  return [
    heldMove("lower the level to just above the reset level"),
    {
      ...below,
      expect: `the output clears ${offDelay > 0 ? `after ${offDelay} s` : "at once"}${healthy}`,
    },
  ];
}

const faultTexts: Readonly<Record<string, string>> = {
  alarm: "the fault counts as a level above the threshold: the output sets after the on-delay",
  hold: "the output stays as it was and the fault is shown",
  bad: "the channel is shown as bad and the vote changes as set",
};

function failureMoves(settings: BenchSettings): BenchMove[] {
  const { coil, sensorFault } = settings;
  const power =
    coil === undefined
      ? "record what the contact does; a fail-safe one trips"
      : isFailSafe(coil)
        ? `the relay drops and trips${contactText(settings, "without power")}`
        : `the relay does not move${contactText(settings, "without power")}: loss of power goes unseen and needs another alarm`;
  return [
    {
      what: "disconnect the sensor, then connect it again",
      share: null,
      expect: (sensorFault === undefined ? undefined : faultTexts[sensorFault]) ?? "record what the device does",
    },
    { what: "take the power away, then give it back", share: null, expect: power },
  ];
}

/** The steps of a bench test at its first frequency. */
export function benchMoves(settings: BenchSettings, numbers: BenchNumbers): BenchMove[] {
  const { onDelay } = settings;
  const { threshold } = numbers;
  const { over: sure, under } = sureLevels(1, numbers);
  const over = atLeast(sure, numbers);
  const healthy = contactText(settings, "healthy");
  const tripped = contactText(settings, "tripped");
  const wait = finiteResult(Math.max(2 * onDelay, 2));
  const short = Number((0.9 * onDelay).toPrecision(3));
  const trip: BenchMove[] = [
    {
      what: `hold just below the threshold for ${wait} s`,
      share: under,
      expect: `no trip below ${threshold}${healthy}`,
    },
    ...(onDelay > 0
      ? [
          {
            what: `raise to above the threshold for ${short} s, then lower again`,
            share: over,
            expect: `no trip: the burst is shorter than the delay of ${onDelay} s${healthy}`,
          },
        ]
      : []),
    {
      what: TAKE_TIME,
      share: over,
      expect: `trip ${onDelay > 0 ? `after ${onDelay} s` : "at once"}${tripped}`,
    },
  ];
  return [...readingMoves(numbers), ...trip, ...resetMoves(settings, numbers), ...failureMoves(settings)];
}
