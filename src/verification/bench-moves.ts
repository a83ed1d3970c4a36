import { finiteResult } from "../core/index";
import { isFailSafe, relayNow } from "../device/index";
import type { BenchSettings } from "./bench-settings";

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
  /** Tolerance as a share of the threshold. */
  readonly tolerance: number;
  readonly resetShare: number;
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

function readingMoves(numbers: BenchNumbers): BenchMove[] {
  return [0.25, 0.5, 0.75].map((share) => ({
    what: `reading at ${share * 100} % of the threshold`,
    share,
    expect: `the device shows ${numbers.text(share)} within ${numbers.within}; no trip`,
    reading: true as const,
  }));
}

/** Steps for reset and latch, from a tripped output. */
function resetMoves(settings: BenchSettings, { tolerance, resetShare, reset }: BenchNumbers): BenchMove[] {
  const { latching, offDelay = 0 } = settings;
  const healthy = contactText(settings, "healthy");
  const tripped = contactText(settings, "tripped");
  const under = resetShare * (1 - tolerance);
  const over = Math.min(resetShare * (1 + tolerance), (1 + resetShare) / 2);
  const held = `the output stays set${tripped}: the level is not below the reset level of ${reset}`;
  if (latching) {
    return [
      { what: "try to reset by hand while the level is up", share: 1 + tolerance, expect: "the reset is refused" },
      { what: "lower the level to just above the reset level and try to reset", share: over, expect: held },
      { what: "lower the level to below the reset level", share: under, expect: `the output stays latched${tripped}` },
      { what: "reset by hand", share: under, expect: `the output clears${healthy}` },
    ];
  }
  return [
    { what: "lower the level to just above the reset level", share: over, expect: held },
    {
      what: "lower the level to below the reset level",
      share: under,
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
  const { tolerance, threshold } = numbers;
  const healthy = contactText(settings, "healthy");
  const tripped = contactText(settings, "tripped");
  const wait = finiteResult(Math.max(2 * onDelay, 2));
  const short = Number((0.9 * onDelay).toPrecision(3));
  const trip: BenchMove[] = [
    {
      what: `hold just below the threshold for ${wait} s`,
      share: 1 - tolerance,
      expect: `no trip below ${threshold}${healthy}`,
    },
    ...(onDelay > 0
      ? [
          {
            what: `raise to above the threshold for ${short} s, then lower again`,
            share: 1 + tolerance,
            expect: `no trip: the burst is shorter than the delay of ${onDelay} s${healthy}`,
          },
        ]
      : []),
    {
      what: "raise to above the threshold and take the time",
      share: 1 + tolerance,
      expect: `trip ${onDelay > 0 ? `after ${onDelay} s` : "at once"}${tripped}`,
    },
  ];
  return [...readingMoves(numbers), ...trip, ...resetMoves(settings, numbers), ...failureMoves(settings)];
}
