import { parsePlant, plantColumns } from "veladis/plant";

/** The cells of a row by column; those that are left out are empty. */
export type Cells = Readonly<Record<string, string>>;

const examples = Object.fromEntries(Object.entries(plantColumns).map(([name, { example }]) => [name, example]));

/** A fan of which all is known and nothing is to be found: limits of its maker, and a trip within them. */
export const sound: Cells = {
  ...examples,
  ...{ "shaft height": "", multiplier: "", table: "", "limits source": "maker's manual, section 6" },
  ...{ limits: "4.5, 7.1 mm/s rms", trip: "7 mm/s rms", "check date": "2026-03-10" },
};

/** A list of rows under all headings. */
export function tableOf(rows: readonly Cells[]) {
  const heading = Object.keys(plantColumns);
  return { heading, rows: rows.map((cells) => heading.map((name) => cells[name] ?? "")) };
}

/** The plant of rows, each the sound one but for the cells that are given. */
export function plantOf(...rows: readonly Cells[]) {
  return parsePlant(tableOf(rows.map((cells) => ({ ...sound, ...cells }))));
}
