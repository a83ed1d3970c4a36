import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** What `plant report` refuses, with files that are made in a folder. */
export function plantReportCases(folder: string): [words: string, input?: string][] {
  const file = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  const list = file("report-list.csv", "tag,kind,table\nLU-01,fan,iso-14694-2003\n");
  const histories = join(folder, "histories");
  mkdirSync(histories);
  writeFileSync(join(histories, "KW-99.csv"), "time,level (mm/s rms)\n2026-01-05,2\n");
  const mixed = join(folder, "mixed-folder");
  mkdirSync(mixed);
  writeFileSync(join(mixed, "notes.txt"), "mine");
  const written = join(folder, "written-report");
  mkdirSync(written);
  writeFileSync(join(written, "index.html"), '<meta name="veladis-plant-report">');
  const untyped = file("untyped.csv", "time,level\n2026-01-05,2\n");
  const bare = file("bare-history.csv", "time,level (mm/s rms)\n");
  const route = file("report-route.csv", "tag,reading\nLU-01,fast\nKW-99,3 mm/s rms\n");
  const days = (name: string, ...all: string[]): string =>
    file(name, `tag,reading,date\n${all.map((day) => `LU-01,3 mm/s rms,${day}\n`).join("")}`);
  const [april, alsoApril] = [days("april.csv", "2026-04-13"), days("also-april.csv", "2026-04-13")];
  const overlapping = days("overlapping.csv", "2026-04-01", "2026-04-20");
  const undated = file("undated.csv", "tag,reading\nLU-01,3 mm/s rms\n");
  const report = `plant report|${list}|--on|2026-11-20`;
  return [
    [report],
    [`${report}|--out|${folder}/no/report`],
    [`${report}|--out|${list}`],
    [`${report}|--out|${mixed}|--replace`],
    [`${report}|--out|${written}`],
    [`${report}|--out|${folder}|--replace`],
    [`${report}|--out|${folder}/report-0|--history|XX=${untyped}`],
    [`${report}|--out|${folder}/report-0|--history|${histories}`],
    [`${report}|--out|${folder}/report-1|--history|LU-01=${untyped}`],
    [`${report}|--out|${folder}/report-2|--history|LU-01=${bare}`],
    [`plant report|${list}|${route}|--on|2026-11-20|--out|${folder}/report-3`],
    [`plant report|${list}|${undated}|${april}|--on|2026-11-20|--out|${folder}/report-4`],
    [`plant report|${list}|${alsoApril}|${april}|--on|2026-11-20|--out|${folder}/report-5`],
    [`plant report|${list}|${april}|${overlapping}|--on|2026-11-20|--out|${folder}/report-6`],
  ];
}
