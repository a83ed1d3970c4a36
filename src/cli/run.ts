import { version } from "../../package.json";
import { unknownName, VeladisError } from "../core/index";
import { isCommand, runCommand } from "./commands/index";
import { type CommandName, pages } from "./commands/pages";
import type { Io } from "./input/io";
import { exitCodes } from "./print/exit-codes";
import { failureText } from "./print/failure";
import { terminalIo } from "./terminal-io";

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

/** Refuses a word that names no command; a reading begins with a number. */
function unknownCommand(word: string): VeladisError {
  const names = new Map([...Object.keys(pages), "help", "version"].map((name) => [name, name]));
  const expected = 'a command, which veladis --help lists, or a reading such as "4.1 mm/s rms to in/s pk"';
  return unknownName("unknown-option", expected, word, [names, pages]);
}

/** The command whose help is asked for behind `help`; none for the list of all. */
function helpedCommand(word: string | undefined): CommandName | undefined {
  if (isCommand(word)) return word;
  if (word === undefined || word.startsWith("-")) return undefined;
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
      await io.out(await helpFor(helpedCommand(args[1])));
      return exitCodes.done;
    }
    const name = isCommand(args[0]) ? args[0] : undefined;
    const rest = name === undefined ? args : args.slice(1);
    if (asksHelp(rest)) {
      await io.out(await helpFor(name));
      return exitCodes.done;
    }
    if (name === undefined && isWord(args[0])) throw unknownCommand(args[0]);
    return await runCommand(name ?? "convert", rest, io);
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    io.err(failureText(error, args.includes("--json")));
    return exitCodes.refused;
  }
}
