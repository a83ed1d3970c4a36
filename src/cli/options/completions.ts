import type { CommandPage } from "./command-page";
import type { ListName } from "./lists";
import type { OptionRow } from "./option-row";

/** The pages of the commands by name; the words of the first serve where no command is named. */
export type Pages = Readonly<Record<string, () => Promise<CommandPage>>>;

/** The words of a closed list: of the row itself, or of the library. */
async function wordsOf({ values, list }: { values?: readonly string[]; list?: ListName }): Promise<readonly string[]> {
  if (values !== undefined || list === undefined) return values ?? [];
  return (await import("./lists")).lists[list]();
}

/** The options that may still be given. */
function optionsLeft({ options }: CommandPage, before: readonly string[]): string[] {
  const left = Object.entries(options).filter(([name, { several }]) => several || !before.includes(`--${name}`));
  return [...left.map(([name]) => `--${name}`), "--help"];
}

/** The option whose value is being typed, if one is. */
function openOption({ options }: CommandPage, last: string | undefined): OptionRow | undefined {
  const row = last?.startsWith("--") ? options[last.slice(2)] : undefined;
  return row?.argument === undefined ? undefined : row;
}

/**
 * What can follow the words behind `veladis`, the last of them unfinished: commands, options, and values where a row
 * has a closed list of them. Nothing where anything can follow, such as the name of a file.
 */
export async function completions(words: readonly string[], pages: Pages): Promise<string[]> {
  // a shell may part an option from its value where they are joined
  const [typed = "", ...back] = words
    .flatMap((word) => (/^--[\w-]+=/.test(word) ? word.split(/=(.*)/s, 2) : [word]))
    .filter((word, i, all) => word !== "=" || i === all.length - 1)
    .map((word) => (word === "=" ? "" : word))
    .reverse();
  const before = back.reverse();
  const all = Object.keys(pages);
  const starting = (words: readonly string[]): string[] => words.filter((word) => word.startsWith(typed));
  const seconds = all.filter((name) => name.startsWith(`${before[0]} `)).map((name) => name.split(" ")[1] as string);
  if (before.length === 1 && seconds.length > 0) return starting(typed.startsWith("-") ? ["--help"] : seconds);
  const named = [before.slice(0, 2).join(" "), before[0] ?? ""].find((name) => Object.hasOwn(pages, name));
  const page = await (pages[named ?? "convert"] as Pages[string])();
  const row = openOption(page, before.at(-1));
  if (before.includes("--")) return [];
  if (row !== undefined) return starting(await wordsOf(row));
  if (typed.startsWith("-")) return starting(optionsLeft(page, before));
  if (before.length === 0) return starting([...new Set(all.map((name) => name.split(" ")[0] as string))]);
  return starting(page.texts === undefined ? optionsLeft(page, before) : await wordsOf(page.texts));
}
