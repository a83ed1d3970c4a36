import { cached, shown, VeladisError } from "../../core/index";
import {
  type Classifier,
  classifier,
  type Machine,
  type MachineClassifier,
  type MachineRef,
  machineClassifier,
  parseMachine,
  type Scheme,
} from "../../severity/index";
import { rowCache } from "./row-cache";
import type { RowFacts } from "./row-reader";
import type { TableSettings } from "./settings";

/** Judges are larger than what else is kept; where speeds run through, most are asked once. */
const MOST_JUDGES = 1024;

/** A judge of readings of one type, frequency and machine. */
export interface RowJudge
  extends Pick<
    Classifier,
    "index" | "worst" | "complete" | "zones" | "verified" | "assumed" | "assumedFacts" | "setAside" | "unjudged"
  > {
  /** Ids of the schemes, of which the worst governs. */
  readonly schemes: readonly string[];
}

const parsed = (words: string): Machine => (words === "" ? {} : parseMachine(words));

/** The machine that a row tells of: words that many rows share, and a speed that may be its own. */
function machineOf(told: string, read: (words: string) => Machine): MachineRef {
  const [words = "", speed] = told.split("\t");
  if (speed === undefined) return words === "" ? {} : words;
  const machine = read(words);
  if (machine.speed === undefined) return { ...machine, speed: { hertz: Number(speed) } };
  throw new VeladisError("syntax", {
    expected: "the running speed once, in the words on the machine or in its column",
    received: shown(words),
  });
}

/** The judge by all schemes that the machine's facts admit. */
function judgeByMachine(
  machine: MachineRef,
  type: string,
  options: Parameters<typeof classifier>[3],
): MachineClassifier {
  if (Object.keys(machine).length > 0) return machineClassifier(machine, type, options);
  throw new VeladisError("missing-fact", {
    expected: "the machine in words, or a scheme, as in --scheme iso-10816-3-2009",
    received: "nothing",
  });
}

/** Finds the judge for what a row says; each is compiled once and kept. */
export function rowJudges(
  { strict, crestFactor }: TableSettings,
  scheme: Scheme | undefined,
): (facts: Omit<RowFacts, "value">) => RowJudge {
  const read = cached(parsed, rowCache);
  const found = cached(
    (key): RowJudge => {
      const [type, hertz, said] = key.split("\n") as [string, string, string];
      const machine = machineOf(said, read);
      const options = {
        assume: strict ? "nothing" : "lowest limits",
        ...(hertz !== "" && { at: { hertz: Number(hertz) } }),
        ...(crestFactor !== undefined && { crestFactor }),
      } as const;
      if (scheme === undefined) return judgeByMachine(machine, type, options);
      const judge = classifier(scheme, machine, type, options);
      return { ...judge, schemes: [scheme.id] };
    },
    { ...rowCache, room: MOST_JUDGES },
  );
  return ({ type, hertz, machine }) => found(`${type}\n${hertz ?? ""}\n${machine}`);
}
