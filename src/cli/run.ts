import { version } from "../../package.json";
import { VeladisError } from "../core/index";
import { runCommand } from "./commands/index";
import { type NamedCommand, namedCommand, unknownCommand } from "./commands/named-command";
import { pages } from "./commands/pages";
import type { Io } from "./input/io";
import { exitCodes } from "./print/exit-codes";
import { failureText } from "./print/failure";
import { terminalIo } from "./terminal-io";

/** The help of a command, or the list of a group; of neither, the help of `convert` with the list of all. */
async function helpFor({ name, group }: NamedCommand): Promise<string> {
  const { groupText, helpText, overviewText } = await import("./options/help-text");
  const all = Object.entries(pages).map(async ([one, load]) => [one, await load()] as const);
  if (group !== undefined) {
    const { commandGroups } = await import("./commands/command-groups");
    return groupText(group, commandGroups[group], await Promise.all(all));
  }
  const page = helpText(await pages[name ?? "convert"]());
  return name === undefined ? page + overviewText(await Promise.all(all)) : page;
}

/** Whether help is asked for; what stands behind `--` are texts. */
function asksHelp(args: readonly string[]): boolean {
  const options = args.includes("--") ? args.slice(0, args.indexOf("--")) : args;
  return options.includes("--help") || options.includes("-h");
}

/** The command or group whose help is asked for behind `help`; neither for the list of all. */
function helped(words: readonly string[]): NamedCommand {
  const named = namedCommand(words);
  const [word] = named.rest;
  if (named.name !== undefined || named.group !== undefined || word === undefined || word.startsWith("-")) return named;
  throw unknownCommand(word);
}

/** Whether a text can only be meant as a command: a bare word, and none for a number. */
function isWord(text: string | undefined): text is string {
  return text !== undefined && /^[a-z][a-z-]{1,31}$/i.test(text) && !/^(nan|infinity|inf|db)$/i.test(text);
}

/** Runs the command line; resolves to the exit code. */
export async function run(args: readonly string[], given: Io): Promise<number> {
  const io = terminalIo(given);
  try {
    if (args[0] === "--version" || args[0] === "version") {
      await io.out(`${version}\n`);
      return exitCodes.done;
    }
    if (args.length === 0 || (args[0]?.startsWith("--confirmed") && !asksHelp(args))) {
      return await (await import("./calculator/start-calculator")).startCalculator(args, io);
    }
    if (args[0] === "help") {
      await io.out(await helpFor(helped(args.slice(1))));
      return exitCodes.done;
    }
    const named = namedCommand(args);
    if (named.group !== undefined || asksHelp(named.rest)) {
      await io.out(await helpFor(named));
      return exitCodes.done;
    }
    if (named.name === undefined && isWord(args[0])) throw unknownCommand(args[0]);
    return await runCommand(named.name ?? "convert", named.rest, io);
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    io.err(failureText(error, args.includes("--json")));
    return exitCodes.refused;
  }
}
