import { unknownName, VeladisError } from "../../core/index";
import { type CommandGroup, commandGroups } from "./command-groups";
import { type CommandName, pages } from "./pages";

/** What the words behind `veladis` name: a command, the list of a group, or none; and what stands behind that. */
export interface NamedCommand {
  readonly name?: CommandName;
  readonly group?: CommandGroup;
  readonly rest: readonly string[];
}

function isCommand(name: string | undefined): name is CommandName {
  return Object.hasOwn(pages, name ?? "");
}

function isGroup(name: string | undefined): name is CommandGroup {
  return Object.hasOwn(commandGroups, name ?? "");
}

/** Whether a text asks for help, or is no word of a command's name. */
function isOption(text: string): boolean {
  return text.startsWith("-");
}

/** The names that a word may have been meant for; of two words the second alone, too. */
function names(): Map<string, string> {
  const all = Object.keys(pages);
  const seconds = all.flatMap((name) => (name.includes(" ") ? [[name.split(" ")[1] as string, name] as const] : []));
  return new Map([...seconds, ...[...all, "help", "version"].map((name) => [name, name] as const)]);
}

/** Refuses a word that names no command; a reading begins with a number. */
export function unknownCommand(word: string): VeladisError {
  const expected = 'a command, which veladis --help lists, or a reading such as "4.1 mm/s rms to in/s pk"';
  return unknownName("unknown-option", expected, word, [names(), pages]);
}

/** Refuses what stands behind the first word of a command of two and is not its second. */
function unknownInGroup(group: CommandGroup, word: string): VeladisError {
  const own = Object.keys(pages).filter((name) => name.startsWith(`${group} `));
  const expected = `a command of veladis ${group}, which veladis ${group} lists`;
  const known = new Map(own.flatMap((name) => [[name, name] as const, [name.slice(group.length + 1), name] as const]));
  const allowed = Object.fromEntries(own.map((name) => [name, true]));
  if (isOption(word)) return new VeladisError("syntax", { expected, received: word.slice(0, 60), allowed: own });
  return unknownName("unknown-option", expected, word, [known, allowed]);
}

/**
 * The command that words begin with: one word, or two of a group. Nothing where the first word is none of them.
 *
 * @throws {@link VeladisError} `unknown-option` for a second word that is none of the group's
 */
export function namedCommand(words: readonly string[]): NamedCommand {
  const [first, second] = words;
  if (isCommand(first)) return { name: first, rest: words.slice(1) };
  if (!isGroup(first)) return { rest: words };
  const both = `${first} ${second}`;
  if (isCommand(both)) return { name: both, rest: words.slice(2) };
  if (second === undefined || second === "--help" || second === "-h") return { group: first, rest: words.slice(1) };
  throw unknownInGroup(first, second);
}
