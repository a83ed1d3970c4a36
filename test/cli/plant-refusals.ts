import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { plantFiles } from "./plant-files";

/**
 * What is refused of a plant's checks and of its record of changes.
 *
 * @param file - writes a file of the cases; gives its path
 */
export function plantRefusals(
  file: (name: string, content: string | Uint8Array) => string,
  folder: string,
): readonly (readonly [words: string, input?: string])[] {
  const plant = file("plant-list.csv", plantFiles["plant.csv"]);
  const results = file("plant-results.csv", plantFiles["results.csv"]);
  const wide = file(
    "plant-wide.csv",
    Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(plantFiles["plant.csv"], "utf16le")]),
  );
  const narrow = file("plant-narrow.csv", plantFiles["plant.csv"].replace(",checked by,", ",seen by,"));
  const record = file(
    "plant-record.csv",
    `${plantFiles["plant-changes.csv"]}2026-11-20,LU-01,bypass,,trip,x,B,E,2026-11-21,\n`,
  );
  const tornRecord = file("plant-torn.csv", `${plantFiles["plant-changes.csv"]}2026-12-01,LU-01`);
  const wideRecord = file(
    "plant-wide-record.csv",
    Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(plantFiles["plant-changes.csv"], "utf16le")]),
  );
  const twice = file("plant-twice.csv", plantFiles["plant.csv"].replace("LU-02,", "LU-01,"));
  mkdirSync(join(folder, "round"));
  file("round/LU-01-2026-12-01.html", "");
  mkdirSync(join(folder, "filled-in"));
  file("filled-in/results.csv", plantFiles["results.csv"]);
  const entry = (more: string): string => `plant change|${record}|--date|2026-12-01|--reason|x|--who|B|${more}`;

  // biome-ignore format: a case is a line
  return [
  [`plant checks|${plant}`], [`plant checks|${plant}|--on|2026-12-01|--ahead|soon`], [`plant checks|${plant}|--on|2026-12-01|--replace`], [`plant checks|${plant}|--on|2026-12-01|--csv|--json`],
  [`plant checks|${plant}|--on|2026-12-01|--sheets|x`], [`plant checks|${plant}|--on|2026-12-01|--shaker|8 Hz to 3 kHz|--out|x.csv`], [`plant checks|${plant}|--on|2026-12-05|--results|${results}|--ahead|3`],
  [`plant checks|-|--on|2026-12-05|--results|${results}|--out|${folder}/o.csv`, plantFiles["plant.csv"]], [`plant checks|${wide}|--on|2026-12-05|--results|${results}|--out|${folder}/o.csv`], [`plant checks|${narrow}|--own|seen by|--on|2026-12-05|--results|${results}|--out|${folder}/o.csv|--keep-going`],
  [`plant checks|${plant}|--on|2026-12-01|--shaker|8 Hz to 3 kHz|--sheets|${folder}/round`], [`plant checks|${plant}|--on|2026-12-01|--shaker|8 Hz to 3 kHz|--sheets|${plant}`],
  ["plant change"], [`plant change|${tornRecord}|--date|2026-12-01|--tag|LU-01|--setting|trip|--old|9 mm/s rms|--reason|x|--who|B`], [`plant change|${wideRecord}|--date|2026-12-01|--tag|LU-01|--setting|trip|--old|9 mm/s rms|--reason|x|--who|B`],
  [`plant change|${record}|--quotes|none|--date|2026-12-01|--tag|LU-01|--setting|trip|--old|9 mm/s rms|--reason|x|--who|B`],
  [entry("--tag|LU-01|--setting|tripp")], [entry("--tag|LU-01|--setting|trip|--old|9")], [entry("--tag|LU-02|--setting|bypass|--new|trip")], [entry("--tag|LU-01|--setting|bypass|--new|trip|--until|2026-12-02|--approved-by|E")],
  [entry("--tag|LU-02|--setting|trip|--old|8 mm/s rms|--new|7 mm/s rms")], [entry(`--tag|LU-03|--setting|trip|--new|7 mm/s rms|--list|${plant}`)], [entry(`--tag|LU-01|--setting|alarm|--old|5 mm/s rms|--new|4 mm/s rms|--list|${plant}`)],
  [`plant checks|${plant}|--on|2026-12-01|--shaker|8 Hz to 3 kHz|--sheets|${folder}/filled-in|--replace`],
  [entry("--tag|lu 01|--setting|trip|--old|9 mm/s rms|--new|8 mm/s rms")],
  [entry(`--tag|LU-01|--setting|alarm|--new|7 mm/s rms|--list|${twice}`)],
  [`plant audit|${plant}|--before|${plant}`], [`plant audit|${plant}|--changes|${record}`], ["plant audit|-", "tag,kind\n"],
  ];
}
