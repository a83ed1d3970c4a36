import { convertAmplitude, signalReading } from "../../amplitude/index";
import { cached } from "../../core/index";
import { type Amplitude, parseAmplitude, readingType } from "../../reading/index";
import { classify, judge } from "../../severity/index";
import { type Explained, explainedSteps } from "../print/explained";
import { rowCache } from "./row-cache";
import { machineOf, parsed, type SchemesAsked } from "./row-judge";
import type { RowFacts } from "./row-reader";
import { judges, type TableSettings } from "./settings";

/** The steps to each cell that is added to a row, by its title; nothing unless asked for. */
export type RowExplained = (facts: RowFacts) => ReturnType<typeof explainedSteps>;

/**
 * Tells how what is added to rows came about, row by row: nothing of it is compiled, since numbers keep no steps. The zone
 * is told as the margin to the limit that governs.
 */
export function rowExplained(settings: TableSettings, { scheme, schemes }: SchemesAsked): RowExplained {
  const { targets, crestFactor, strict, source } = settings;
  const by = crestFactor === undefined ? {} : { crestFactor };
  const options = { ...by, assume: strict ? "nothing" : "lowest limits" } as const;
  const read = cached(parsed, rowCache);
  return ({ value, type, signal, hertz, machine: said }) => {
    const own =
      signal === undefined
        ? parseAmplitude(`${value} ${type}`)
        : signalReading(signal, /\s(?:by|of)\s/.test(signal) ? {} : source);
    const reading: Amplitude = hertz === undefined ? own : { ...own, hertz };
    const all = targets.map((target): Explained => [readingType(target), convertAmplitude(reading, target, by)]);
    if (judges(settings)) {
      const machine = machineOf(said, read);
      const verdict =
        scheme === undefined
          ? judge(reading, machine, { ...options, ...(schemes && { schemes }) })
          : classify(reading, { ...options, scheme, machine });
      all.push(["zone", verdict]);
    }
    return explainedSteps(true, ...all);
  };
}
