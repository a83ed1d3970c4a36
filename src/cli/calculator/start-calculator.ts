import type { Io } from "../input/io";
import { confirmedOption } from "../options/confirmed-option";
import { parsedArguments } from "../options/parsed-arguments";
import { confirmed } from "../options/shared-options";

/** What stands behind `veladis` where no command does. */
const page = {
  summary: "the calculator",
  usage: "veladis [--confirmed <file>]",
  does: "Opens the calculator.",
  examples: [],
  options: { confirmed },
} as const;

/** The calculator: for a person at a terminal, or for lines that are piped in; by confirmed limits where there are some. */
export async function startCalculator(args: readonly string[], io: Io): Promise<number> {
  const schemes = await confirmedOption(parsedArguments(args, page).values.confirmed, io);
  if (io.piped === undefined) return (await import("./open-calculator")).openCalculator(io, schemes);
  return (await import("./calculate-lines")).calculateLines(io, schemes);
}
