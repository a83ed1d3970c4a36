import { finiteResult, frozen, requireChoice, requirePositive, withParameters } from "../core/index";
import { significant } from "../reading/index";
import { type MachineType, machineTypes } from "../severity/index";
import { COMMON_PRACTICE, type Reason } from "./reason";

/** Delays for one kind of machine, in seconds, all common practice without a source. */
interface DelayRow {
  readonly trip: number;
  readonly alarm: number;
  /** A trip delay beyond this leaves the machine running in damage for too long. */
  readonly most: number;
  readonly why: string;
}

const OTHER: DelayRow = { trip: 3, alarm: 5, most: 10, why: "rides out knocks and passing disturbances" };

/** Delays by kind of machine. To add one, add its row here. */
// biome-ignore format: a row of a table is a line
const delays: { readonly [Type in MachineType]?: DelayRow } = {
  pump: { trip: 3, alarm: 5, most: 10, why: "rides out bursts of cavitation and valve movements" },
  fan: { trip: 5, alarm: 10, most: 10, why: "rides out draught pulsation and a passing stall" },
  motor: { trip: 3, alarm: 5, most: 10, why: "rides out load steps of the driven machine" },
  generator: { trip: 3, alarm: 5, most: 5, why: "rides out switching in the grid" },
  "gear drive": { trip: 2, alarm: 5, most: 5, why: "tooth damage spreads within seconds" },
  compressor: { trip: 1, alarm: 3, most: 3, why: "high energy; damage spreads within seconds" },
  "steam turbine": { trip: 1, alarm: 3, most: 3, why: "high energy; damage spreads within seconds" },
  "gas turbine": { trip: 1, alarm: 3, most: 3, why: "high energy; damage spreads within seconds" },
  "cooling tower drive": { trip: 5, alarm: 10, most: 10, why: "rides out gusts and blade passing at low speed" },
};

const API_670 = /* @__PURE__ */ frozen({
  title: "API 670, later editions",
  provenance: "memory",
  note: "about 1 s as standard, up to 3 s, for a shutdown on radial vibration; not checked against a printed copy",
} as const);

const PRACTICE = /* @__PURE__ */ frozen({
  title: "delays of 3 s and 5 s met in practice, Eng-Tips thread 326864",
  provenance: "reported",
  page: "http://www.eng-tips.com/viewthread.cfm?qid=326864",
  note: "anecdotal; the 100 ms of API 670 (1993) is the monitor's own processing time, no delay",
} as const);

/** Delays recommended for a machine. */
export interface DelayAdvice {
  /** On-delay of the alarm in seconds. */
  readonly alarm: number;
  /** On-delay of the trip in seconds. */
  readonly trip: number;
  /** The longest trip delay that suits the machine, in seconds. */
  readonly longest: number;
  readonly reasons: readonly Reason[];
}

const kinds = /* @__PURE__ */ Object.keys(machineTypes) as MachineType[];

/** The delays of a kind of machine, or those of the wider kind that it belongs to. */
function delaysOf(type: MachineType): DelayRow | undefined {
  const entry = machineTypes[type];
  return delays[type] ?? ("of" in entry ? delays[entry.of] : undefined);
}

/**
 * On-delays for a kind of machine and its speed, with reasons.
 *
 * @param type - the kind of machine, if it is known
 * @param hertz - running speed in hertz, if it is known
 * @throws {@link VeladisError} `unknown-option` or `wrong-type` for a kind of machine there is none of, `not-positive`
 * @example
 * ```ts
 * import { delayAdvice } from "veladis/protection";
 *
 * delayAdvice("fan", 24.5).trip; // => 5
 * delayAdvice("pump", 100).trip; // => 1
 * delayAdvice("pump", 2).trip; // => 5
 * ```
 */
export function delayAdvice(type: MachineType | undefined, hertz: number | undefined): DelayAdvice {
  return withParameters({ type, hertz }, () => {
    const known =
      type === undefined ? undefined : requireChoice(type, kinds, "a kind of machine", { parameter: "type" });
    const row = (known && delaysOf(known)) ?? OTHER;
    if (hertz !== undefined) requirePositive(hertz, "a running speed above zero, in Hz", { parameter: "hertz" });
    const name = type ?? "machine";
    const reasons: Reason[] = [
      { text: `${row.trip} s for a ${name}: ${row.why}`, source: row.trip >= 3 ? PRACTICE : COMMON_PRACTICE },
    ];
    let { trip, alarm, most } = row;
    if (hertz !== undefined && hertz > 60 && trip > 1) {
      trip = 1;
      most = Math.min(most, 3);
      reasons.push({ text: "1 s above 3600 r/min, where damage spreads within seconds", source: API_670 });
    } else if (most === 3) {
      reasons.push({ text: "about 1 s, not more than 3 s", source: API_670 });
    }
    const tenTurns = hertz === undefined ? 0 : finiteResult(10 / hertz);
    if (tenTurns > trip) {
      trip = Math.ceil(tenTurns);
      most = Math.max(most, trip);
      reasons.push({
        text: `${trip} s at ${significant((hertz as number) * 60)} r/min, so that ten turns are measured before the machine is stopped`,
        source: COMMON_PRACTICE,
      });
    }
    alarm = Math.max(alarm, trip);
    reasons.push({
      text: "an alarm may wait longer than a trip; where a trip must be quick and sure, voting is better than delay",
      source: PRACTICE,
    });
    return Object.freeze({ alarm, trip, longest: most, reasons: Object.freeze(reasons) });
  });
}
