import { version } from "../../package.json";
import { VeladisError } from "../core/index";
import { isCommand, runCommand } from "./commands/index";
import { type CommandName, pages } from "./commands/pages";
import type { Io } from "./input/io";
import { exitCodes } from "./print/exit-codes";
import { failureText } from "./print/failure";

/** The help of a command; of none by name, that of `convert` with the list of all. */
async function helpFor(name: CommandName | undefined): Promise<string> {
  const { helpText, overviewText } = await import("./options/help-text");
  const page = helpText(await pages[name ?? "convert"]());
  if (name !== undefined) return page;
  const all = Object.entries(pages).map(async ([one, load]) => [one, await load()] as const);
  return page + overviewText(await Promise.all(all));
}

/** Whether help is asked for; what stands behind `--` are texts. */
function asksHelp(args: readonly string[]): boolean {
  const options = args.includes("--") ? args.slice(0, args.indexOf("--")) : args;
  return options.includes("--help") || options.includes("-h");
}

/** Runs the command line; resolves to the exit code. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  try {
    if (args[0] === "--version") {
      await io.out(`${version}\n`);
      return exitCodes.done;
    }
    if (args.length === 0) {
      if (io.piped === undefined) return await (await import("./calculator/open-calculator")).openCalculator(io);
      return await (await import("./calculator/calculate-lines")).calculateLines(io);
    }
    const name = isCommand(args[0]) ? args[0] : undefined;
    const rest = name === undefined ? args : args.slice(1);
    if (asksHelp(rest)) {
      await io.out(await helpFor(name));
      return exitCodes.done;
    }
    return await runCommand(name ?? "convert", rest, io);
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    io.err(failureText(error, args.includes("--json")));
    return exitCodes.refused;
  }
}
