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
  /** What the output has to be for what is expected; left out where either will do. */
  readonly from?: "set" | "clear";
  /** What the output is behind it; left out where it stays as it was. */
  readonly leaves?: Output;
}

/** An output as far as a plan knows it: a level near the threshold may set it or not. */
export type Output = "set" | "clear" | "either";

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

/** What a healthy output does at a level, and what it is then. */
function outputAt(share: number, numbers: BenchNumbers): readonly [Output, string] {
  const { over, under } = sureLevels(1, numbers);
  if (share <= under) return ["clear", "no trip"];
  return share >= over
    ? ["set", "it trips after the delay"]
    : ["either", "so near the threshold that it may trip or not"];
}

function readingMove(title: string, share: number, numbers: BenchNumbers): BenchMove {
  const [leaves, does] = outputAt(share, numbers);
  const expect = `the device shows ${numbers.text(share * numbers.response)} within ${numbers.within}; ${does}`;
  return { what: title, share, expect, reading: true, from: "clear", leaves };
}

function readingMoves(numbers: BenchNumbers): BenchMove[] {
  const { own } = numbers;
  return own === undefined
    ? [0.25, 0.5, 0.75].map((share) => readingMove(`reading at ${share * 100} % of the threshold`, share, numbers))
    : [readingMove("reading at the one level of the shaker", own, numbers)];
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

/** When an output that does not latch clears. */
function clearsText({ offDelay = 0 }: BenchSettings): string {
  return `the output clears ${offDelay > 0 ? `after ${offDelay} s` : "at once"}`;
}

/** The step between one that sets the output, or may, and one that expects it clear. */
export function clearMove(settings: BenchSettings, output: Output): BenchMove {
  const { latching, offDelay = 0 } = settings;
  const isSet = output === "set";
  const waited = offDelay > 0 ? `shaker off for ${offDelay} s` : "shaker off";
  const reset = isSet ? "shaker off, reset by hand" : "shaker off, reset by hand if the output is set";
  const clears = latching ? "the output clears" : clearsText(settings);
  return {
    what: latching ? reset : waited,
    share: null,
    expect: `${isSet ? clears : "the output is clear"}${contactText(settings, "healthy")}`,
    leaves: "clear",
  };
}

/** The step between one that leaves the output clear and one that expects it set. */
export function setMove(settings: BenchSettings, numbers: BenchNumbers): BenchMove {
  return {
    what: "raise to above the threshold until the output is set again",
    share: atLeast(sureLevels(1, numbers).over, numbers),
    expect: `the output is set${contactText(settings, "tripped")}`,
    leaves: "set",
  };
}

/** Steps for reset and latch, from a tripped output. */
function resetMoves(settings: BenchSettings, numbers: BenchNumbers): BenchMove[] {
  const { resetShare, reset, response, own } = numbers;
  const { latching } = settings;
  const healthy = contactText(settings, "healthy");
  const tripped = contactText(settings, "tripped");
  const { over, under } = sureLevels(resetShare, numbers);
  const up = atLeast(sureLevels(1, numbers).over, numbers);
  const below = belowReset(under, numbers);
  // with a hysteresis this small, a level that is surely above the reset level is no longer below the threshold
  const proves = over * response < 1;
  const staysSet = `the output stays set${tripped}: the level is not below the reset level of ${reset}`;
  const staysSetMove = (title: string): BenchMove =>
    proves
      ? { what: title, share: over, expect: staysSet, from: "set" }
      : {
          what: "lower the level in small steps and note where the output clears or may be reset",
          // a shaker of one level has no small steps
          share: own === undefined ? null : resetShare,
          from: "set",
          leaves: "clear",
          expect: `a level between threshold and reset level of ${reset} cannot be proven: the hysteresis is no larger than what device and shaker may be off; hold the level noted against the one at which the output set`,
        };
  if (latching) {
    return [
      { what: "try to reset by hand while the level is up", share: up, expect: "the reset is refused", from: "set" },
      staysSetMove("lower the level to just above the reset level and try to reset"),
      { ...below, expect: `the output stays latched${tripped}`, from: "set" },
      {
        what: "reset by hand",
        share: below.share,
        expect: `the output clears${healthy}`,
        from: "set",
        leaves: "clear",
      },
    ];
  }
  return [
    staysSetMove("lower the level to just above the reset level"),
    { ...below, expect: `${clearsText(settings)}${healthy}`, from: "set", leaves: "clear" },
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
  const fault = sensorFault === undefined ? undefined : faultTexts[sensorFault];
  return [
    {
      what: "disconnect the sensor, then connect it again",
      share: null,
      expect: fault ?? "record what the device does",
      from: "clear",
      ...(fault === undefined && { leaves: "either" as const }),
      // what does not latch clears by itself once the sensor is back
      ...(sensorFault === "alarm" && { leaves: settings.latching ? ("set" as const) : ("either" as const) }),
    },
    // a relay that a trip has moved already does not show what the loss of power does
    { what: "take the power away, then give it back", share: null, expect: power, from: "clear" },
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
      from: "clear",
    },
    ...(onDelay > 0
      ? [
          {
            // below the threshold alone the timer of some devices runs on
            what: `raise to above the threshold for ${short} s, then ${numbers.own === undefined ? "to less than the reset level" : "switch the shaker off"}`,
            share: over,
            expect: `no trip: the burst is shorter than the delay of ${onDelay} s${healthy}`,
            from: "clear" as const,
          },
        ]
      : []),
    {
      what: TAKE_TIME,
      share: over,
      expect: `trip ${onDelay > 0 ? `after ${onDelay} s` : "at once"}${tripped}`,
      from: "clear",
      leaves: "set",
    },
  ];
  return [...readingMoves(numbers), ...trip, ...resetMoves(settings, numbers), ...failureMoves(settings)];
}
