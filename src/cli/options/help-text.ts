import { exitCodes } from "../print/exit-codes";
import { labelled } from "../print/labelled";
import { wrapped } from "../print/wrapped";
import type { CommandPage } from "./command-page";
import { type ExitText, exitSays, exitTexts, exitTextsOf } from "./exit-texts";
import type { OptionRow } from "./option-row";

/** Wider than this, an option stands on a line of its own. */
const WIDEST = 26;

/** An option as it is written: `--digits <n>`, or `--endian little|big`. */
export function optionHead(name: string, { argument, values }: OptionRow): string {
  return argument === undefined ? `--${name}` : `--${name} ${values?.join("|") ?? argument}`;
}

/** What holds where the option is left out. */
export function otherwiseText({ default: value, otherwise }: OptionRow): string {
  return otherwise ?? value ?? "";
}

/** A row in a line of help: with its example where that shows more than a word, and with what holds without it. */
function rowText(row: OptionRow): string {
  const { help, example } = row;
  const otherwise = otherwiseText(row);
  return `${help}${example?.startsWith('"') ? `, e.g. ${example}` : ""}${otherwise && `; ${otherwise} if not given`}`;
}

/** Text broken between words, never within quotation marks. */
function brokenOutside(text: string, indent: string, first = indent): string {
  const whole = text.replace(/"[^"]*"/g, (quoted) => quoted.replaceAll(" ", "\u00a0"));
  return wrapped(whole, indent, first).replaceAll("\u00a0", " ");
}

/** The headings of a page's options with the options below each, in the order of the rows. */
export function optionGroups({ options }: CommandPage): (readonly [group: string, ...rows: [string, OptionRow][]])[] {
  const entries = Object.entries(options);
  const groups = [...new Set(entries.map(([, { group = "options" }]) => group))];
  return groups.map((group) => [group, ...entries.filter(([, row]) => (row.group ?? "options") === group)]);
}

function optionLines(entries: readonly (readonly [string, OptionRow])[], width: number): string {
  const margin = " ".repeat(width + 4);
  return entries
    .map(([name, row]) => {
      const head = `  ${optionHead(name, row)}`;
      const text = rowText(row);
      return head.length > width + 2
        ? `${head}\n${brokenOutside(text, margin)}`
        : brokenOutside(text, margin, head.padEnd(width + 4));
    })
    .join("");
}

/** Exit codes with what each says. */
function exitLines(texts: readonly ExitText[]): string {
  const rows = texts.map((text) => wrapped(exitSays(text), " ".repeat(8), `  ${text.code}`.padEnd(8)));
  return `exit codes\n${rows.join("")}`;
}

/** The page that `--help` prints of a command. */
export function helpText(page: CommandPage): string {
  const { usage, does, examples, words = [], options, notes = [] } = page;
  const heads = Object.entries(options).map(([name, row]) => optionHead(name, row).length);
  const width = Math.max(0, ...heads.filter((length) => length <= WIDEST));
  return [
    `${usage}\n\n${wrapped(does)}\n`,
    `${examples.map((line) => `  ${line}\n`).join("")}\n`,
    words.map(([label, ...texts]) => labelled(label, texts, 11)).join("") + (words.length > 0 ? "\n" : ""),
    optionGroups(page)
      .map(([group, ...rows]) => `${group}\n${optionLines(rows, width)}\n`)
      .join(""),
    notes.map((note) => wrapped(note)).join("") + (notes.length > 0 ? "\n" : ""),
    exitLines(exitTextsOf(options).filter(({ code }) => code <= exitCodes.refused)),
  ].join("");
}

/** Commands by name, a line or two each. */
function commandRows(pages: readonly (readonly [name: string, page: CommandPage])[]): string {
  const width = Math.max(...pages.map(([name]) => name.length));
  return pages
    .map(([name, { summary }]) => wrapped(summary, " ".repeat(width + 4), `  ${name.padEnd(width)}  `))
    .join("");
}

/** What a group of commands is for, with the list of them. */
export function groupText(
  group: string,
  says: string,
  pages: readonly (readonly [name: string, page: CommandPage])[],
): string {
  const own = pages.filter(([name]) => name.startsWith(`${group} `));
  const head = `commands (veladis ${group} <command> --help tells more)`;
  return `veladis ${group} <command>\n\n${wrapped(says)}\n${head}\n${commandRows(own)}`;
}

/** The list of all commands, a line or two each. */
export function overviewText(pages: readonly (readonly [name: string, page: CommandPage])[]): string {
  const width = Math.max(...pages.map(([name]) => name.length));
  const head = "commands (veladis <command> --help tells more; veladis alone opens the calculator)";
  const about = [
    ["help", "this page; help <command> is that of a command, as <command> --help"],
    ["version", "the version, as --version"],
  ].map(([name = "", text]) => `  ${name.padEnd(width)}  ${text}\n`);
  return `\n${head}\n${commandRows(pages)}${about.join("")}\n${exitLines(exitTexts)}`;
}
