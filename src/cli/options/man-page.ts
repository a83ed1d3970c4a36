import type { CommandPage } from "./command-page";
import { exitSays, exitTexts } from "./exit-texts";
import { optionGroups, optionHead, otherwiseText } from "./help-text";

/** A text as the format of manual pages has it: nothing in it is taken for a request or an escape. */
function roff(text: string): string {
  return text
    .replaceAll("\\", "\\e")
    .replaceAll("-", "\\-")
    .replace(/^([.'])/gm, "\\&$1");
}

const heading = (text: string): string => `.SH ${roff(text.toUpperCase())}\n`;
const paragraph = (text: string): string => `.PP\n${roff(text)}\n`;
const entry = (head: string, text: string): string => `.TP\n.B ${roff(head)}\n${roff(text)}\n`;

function commandPart(name: string, page: CommandPage): string {
  const { usage, does, examples, words = [], notes = [] } = page;
  const options = optionGroups(page).map(([group, ...rows]) => {
    const told = rows.map(([option, row]) => {
      const otherwise = otherwiseText(row);
      const example = row.example === undefined ? "" : `, e.g. ${row.example}`;
      return entry(optionHead(option, row), `${row.help}${example}${otherwise && `; ${otherwise} if not given`}`);
    });
    return rows.length === 0 ? "" : `.PP\n.I ${roff(group)}\n${told.join("")}`;
  });
  return [
    heading(`veladis ${name}`),
    paragraph(usage),
    paragraph(does),
    `.PP\n.nf\n${roff(examples.join("\n"))}\n.fi\n`,
    ...words.map(([label, ...texts]) => entry(label, texts.join("; "))),
    ...options,
    ...notes.map(paragraph),
  ].join("");
}

/** The manual page of the command, made of the rows that help and completion are made of. */
export function manPage(version: string, pages: readonly (readonly [name: string, page: CommandPage])[]): string {
  return [
    `.TH VELADIS 1 "" "veladis ${roff(version)}" "User Commands"\n`,
    `${heading("name")}veladis \\- vibration amplitudes for the protection of rotating plant\n`,
    heading("synopsis"),
    ".B veladis\n[\\fIcommand\\fR] [\\fItexts\\fR] [\\fIoptions\\fR]\n",
    heading("commands"),
    ...pages.map(([name, { summary }]) => entry(name, summary)),
    ...pages.map(([name, page]) => commandPart(name, page)),
    heading("exit status"),
    ...exitTexts.map((text) => entry(`${text.code}`, exitSays(text))),
    heading("environment"),
    entry(
      "NO_COLOR",
      "when set and not empty, a terminal is written to without colour; colour never carries a meaning alone",
    ),
  ].join("");
}
