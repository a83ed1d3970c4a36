import { shown, VeladisError } from "../../core/index";
import { type ColumnRead, columnRead } from "./column-read";

/** Headings of what decides a check and is read from no column, with what says it for all rows. */
const deciding: readonly (readonly [heading: RegExp, instead: string])[] = [
  [/\b(?:tolerances?|tol|limits? of error)\b/, "--tolerance says the tolerance of all rows"],
  [
    /\b(?:uncertainty|uncertainties)\b|^(?:u|u95)$/,
    "--uncertainty says that of all rows, or ± behind each level its own",
  ],
  [/\bas[ -]?(?:left|found)\b/, "a file holds one check of each level: as found and as left in a file each"],
  [
    /^(?:sensors?|sensitivity|sensor sensitivity)$/,
    '--sensor says that of all rows, or each cell its own: "98 mV pk by 100 mV/g"',
  ],
  [/^(?:loops?|range|loop range)$/, '--loop says that of all rows, or each cell its own: "12 mA of 0 to 20 mm/s rms"'],
  [/^(?:units?|detectors?)$/, "each cell says its unit and detector, or --from those of all rows"],
  [
    /\b(?:freq|frequency|speed|rpm|hz)\b|^(?:r\/min|rev\/min|cpm)$/,
    'a column headed "frequency (Hz)" or "speed (r/min)" says at which each level is',
  ],
  [/^(?:(?:decision )?rule)$/, "--rule says the rule of all rows"],
];

/** A heading in small letters, its underscores as spaces, without a unit behind it. */
function plainWords(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/_/g, " ")
    .replace(/\s*(?:\(.*\)|\[.*\]|%)\s*$/, "")
    .trim()
    .replace(/\s+/g, " ");
}

/**
 * The columns of a check that are not read.
 *
 * @param read - indices of those that are
 * @throws {@link VeladisError} `unknown-option` for one whose heading says that it decides the check
 */
export function unreadColumns(headings: readonly string[], read: readonly number[]): readonly ColumnRead[] {
  const others = headings.flatMap((_heading, i) => (read.includes(i) ? [] : [i]));
  for (const index of others) {
    const words = plainWords(headings[index] as string);
    const found = deciding.find(([heading]) => heading.test(words));
    if (found === undefined) continue;
    throw new VeladisError("unknown-option", {
      expected: `columns known, indicated, point and frequency or speed, and none beside them that decides the check: ${found[1]}`,
      received: `column ${index + 1} ${shown((headings[index] as string).trim())}`,
    });
  }
  return others.map((index) => columnRead(headings, index));
}

/** The columns that are not read, in a line; nothing for none. */
export function notReadText(columns: readonly ColumnRead[]): string {
  if (columns.length === 0) return "";
  return `columns not read: ${columns.map(({ number, heading }) => `${number} ${shown(heading)}`).join(", ")}\n`;
}
