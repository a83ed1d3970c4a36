import { pages } from "../../../src/cli/commands/pages";
import type { CommandPage } from "../../../src/cli/options/command-page";
import { exitSays, exitTexts } from "../../../src/cli/options/exit-texts";
import { optionGroups, optionHead, otherwiseText } from "../../../src/cli/options/help-text";
import { MADE, page, table } from "./markdown";

const code = (text: string | undefined): string => (text === undefined || text === "" ? "" : `\`${text}\``);

function optionTables(command: CommandPage): string[] {
  return optionGroups(command).flatMap(([group, ...rows]) => [
    `### ${group}`,
    table(
      ["option", "what it says", "example", "if not given"],
      rows.map(([name, row]) => [code(optionHead(name, row)), row.help, code(row.example), otherwiseText(row)]),
    ),
  ]);
}

function commandSection(name: string, command: CommandPage): string[] {
  const { usage, does, examples, words = [], notes = [] } = command;
  return [
    `## ${name}`,
    code(usage),
    does,
    `\`\`\`text\n${examples.join("\n")}\n\`\`\``,
    ...(words.length > 0 ? [words.map(([label, ...texts]) => `- **${label}**: ${texts.join("; ")}`).join("\n")] : []),
    ...optionTables(command),
    ...notes,
  ];
}

/** The command, with every option of each of its commands, from the rows that its help is made of. */
export async function commandReference(): Promise<Record<string, string>> {
  const all = await Promise.all(Object.entries(pages).map(async ([name, load]) => [name, await load()] as const));
  const overview = all.map(([name, { summary }]) => [`[${name}](#${name.replaceAll(" ", "-")})`, summary]);
  return {
    "commands.md": page("The command", [
      `\`veladis\` alone opens [the calculator](../guides/calculator.md). \`veladis <command> --help\` prints a section of this page. ${MADE}`,
      "A text that begins with a dash stands after `--`.",
      table(
        ["exit code", "says"],
        exitTexts.map((text) => [`${text.code}`, exitSays(text)]),
      ),
      table(["command", "for"], overview),
      ...all.flatMap(([name, command]) => commandSection(name, command)),
    ]),
  };
}
