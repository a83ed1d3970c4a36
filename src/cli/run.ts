import { version } from "../../package.json";
import { VeladisError } from "../core/index";
import type { Command } from "./commands/command";
import { type CommandEntry, commands } from "./commands/index";
import type { Io } from "./input/io";
import { exitCodes } from "./print/exit-codes";
import { failureText } from "./print/failure";

function overview(): string {
  const entries = Object.entries(commands) as [string, CommandEntry][];
  const width = Math.max(...entries.map(([name]) => name.length));
  const rows = entries.map(([name, { summary }]) => `  ${name.padEnd(width)}  ${summary}`);
  const head = "commands (veladis <command> --help tells more; veladis alone opens the calculator)";
  return `\n${head}\n${rows.join("\n")}\n`;
}

/** The command that the arguments name, and the arguments behind its name. */
async function commandOf(args: readonly string[]): Promise<[Command, readonly string[], named: boolean]> {
  const name = args[0] as keyof typeof commands;
  if (Object.hasOwn(commands, name ?? "")) return [await commands[name].load(), args.slice(1), true];
  return [await commands.convert.load(), args, false];
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
    const [command, rest, named] = await commandOf(args);
    if (rest.includes("--help") || rest.includes("-h")) {
      await io.out(command.help + (named ? "" : overview()));
      return exitCodes.done;
    }
    return await command.run(rest, io);
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    io.err(failureText(error, args.includes("--json")));
    return exitCodes.refused;
  }
}
