import { finiteResult } from "../core/index";
import type { Rounding } from "../reading/index";
import type { BenchMove, Output } from "./bench-move";
import type { BenchSettings } from "./bench-settings";
import { clearsText, contactText, waitOf } from "./bench-texts";
import { failureMoves } from "./failure-moves";

/** The step that proves the trip and its delay. */
export const TAKE_TIME = "raise to above the threshold and take the time";

/** What gives the level, in words. */
export interface BenchWords {
  readonly source: "shaker" | "source";
  /** How it gives none. */
  readonly off: string;
  /** What is taken away from the device and given back. */
  readonly input: "sensor" | "signal";
}

export const SHAKER_WORDS: BenchWords = /* @__PURE__ */ Object.freeze({
  source: "shaker",
  off: "shaker off",
  input: "sensor",
});

/** The numbers that the moves are made of. */
export interface BenchNumbers {
  /** Tolerance of the device as a share of the threshold, below 1. */
  readonly tolerance: number;
  /** A share moved as far to a side as the source of the level may be off (k = 2); the same where that is not stated. */
  readonly moved: (share: number, side: "up" | "down") => number;
  /** Share of the level that the device nominally reads at this frequency. */
  readonly response: number;
  readonly resetShare: number;
  /** The one level of the shaker as a share of the threshold; undefined where it can be set. */
  readonly own: number | undefined;
  readonly threshold: string;
  readonly reset: string;
  /** A share of the threshold as a level. */
  readonly text: (share: number) => string;
  /** A share brought to a level that can be set; to the side that proves more, or to the nearest. */
  readonly settable: (share: number, side: Rounding) => number;
  /** The tolerance as it was stated. */
  readonly within: string;
  readonly words: BenchWords;
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

/** Readings at a quarter, half and three quarters of the threshold, as the shaker sets them: a level comes once. */
function readingMoves(numbers: BenchNumbers): BenchMove[] {
  const { own, settable } = numbers;
  if (own !== undefined) return [readingMove("reading at the one level of the shaker", own, numbers)];
  const shares = new Set([0.25, 0.5, 0.75].map((share) => settable(share, "nearest")));
  return [...shares].map((share) =>
    readingMove(`reading at ${Number((100 * share).toPrecision(3))} % of the threshold`, share, numbers),
  );
}

/**
 * The level at which a device within its tolerance surely reads at least a share of the threshold, and the one at which it
 * surely reads less, as far as the shaker is known. Both are rounded away from that share, so that they prove it still.
 */
export function sureLevels(share: number, { tolerance, moved, response, settable }: BenchNumbers) {
  const level = share / response;
  return {
    over: settable(finiteResult(moved(level / (1 - tolerance), "up")), "up"),
    under: settable(moved(level * (1 - tolerance), "down"), "down"),
  };
}

/** A level of this share or more: the one of the shaker, where that is enough. */
export function atLeast(share: number, { own }: BenchNumbers): number {
  return own !== undefined && own >= share ? own : share;
}

/** A level below the reset level; a shaker of one level is switched off for it. */
function belowReset(share: number, { own }: BenchNumbers): Pick<BenchMove, "what" | "share"> {
  return own === undefined
    ? { what: "lower the level to below the reset level", share }
    : { what: "switch the shaker off, which is below the reset level", share: null };
}

/** The step between one that sets the output, or may, and one that expects it clear. */
export function clearMove(settings: BenchSettings, output: Output, { off }: BenchWords): BenchMove {
  const { latching, offDelay = 0 } = settings;
  const isSet = output === "set";
  const waited = offDelay > 0 ? `${off} for ${offDelay} s` : off;
  const reset = `${off}, reset by hand${isSet ? "" : " if the output is set"}`;
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
  const { resetShare, reset, response, own, words } = numbers;
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
          expect: `a level between threshold and reset level of ${reset} cannot be proven: the hysteresis is no larger than what device and ${words.source} may be off; hold the level noted against the one at which the output set`,
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

/** The steps of a bench test at its first frequency. */
export function benchMoves(settings: BenchSettings, numbers: BenchNumbers): BenchMove[] {
  const { onDelay } = settings;
  const { threshold, words } = numbers;
  const { over: sure, under } = sureLevels(1, numbers);
  const over = atLeast(sure, numbers);
  const reads = under * numbers.response;
  const healthy = contactText(settings, "healthy");
  const tripped = contactText(settings, "tripped");
  const wait = waitOf(settings);
  const short = Number((0.9 * onDelay).toPrecision(3));
  const trip: BenchMove[] = [
    {
      what: `hold just below the threshold for ${wait} s`,
      share: under,
      expect: `no trip${healthy}: the device reads about ${numbers.text(reads)}, ${Number((100 * (1 - reads)).toPrecision(2))} % below the threshold of ${threshold}, as far as device and ${words.source} may be off`,
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
  return [...readingMoves(numbers), ...trip, ...resetMoves(settings, numbers), ...failureMoves(settings, words.input)];
}
