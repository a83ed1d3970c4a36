import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { veladis as run } from "./in-process";
import { workbook } from "./made-workbook";
import { plantRefusals } from "./plant-refusals";
import { plantReportCases } from "./plant-report-cases";

/** Where the files of the cases stand; whoever imports them removes it. */
export const folder = mkdtempSync(join(tmpdir(), "wording-"));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const absent = join(folder, "absent.csv");
const route = file("route.txt", "0.25 in/s pk\n4,1 mm/s rms\n");
const levels = file("levels.csv", "time,level\n0,4\n1,5\n0,6\n");
const rising = file("rising.csv", "time,level\n0,4\n1,5\n2,6\n3,5\n");
const unclosed = file("unclosed.csv", 'value\n"4.1\n');
const blank = file("blank.csv", "value,machine\n4.1,\n");
const word = file("word.csv", "time,level\n0,four\n");
const noon = file("noon.csv", "time,level\nnoon,4\n");
const dotted = file("dotted.csv", "time,level\n1.2.3,4\n");
const header = file("header.csv", "");
const points = file("points.csv", "known,shown\n1,1\n");
const broken = file("broken.csv", "known,indicated\n1,1\n2,two\n");
const one = file("one.csv", "1\n2\n3\n1\n2\n3\n1\n2\n");
const two = file("two.csv", "1,2\n3,4\n");
const holes = file("holes.csv", "1,2\n3\n");
const empty = file("empty.csv", "a,b\n1,\n");
const letters = file("letters.csv", "1\ntwo\n");
const odd = file("odd.f32", new Uint8Array(7));
const rails = file("rails.i16", Uint8Array.of(0, 0, 255, 127, 0, 128, 1, 0));
const unsaid = file("samples.dat", new Uint8Array(8));
const json = file("scheme.json", "{ not json");
const readings = file("readings.csv", "value,unit,speed,machine\n4.1,mm/s,1500,pump 90 kW 1490 r/min\n4,mm/s,1490\n");
const mixed = file("mixed.csv", "time,level\n2026-03-04 11:59:30,2\n5,2\n");
const unreal = file("unreal.csv", "time,level\n2026-02-30 12:00:00,2\n");
const short = file("short.csv", "time,level\n04/03/26 12:00:00,2\n");
const either = file("either.csv", "time,level\n03/04/2026 12:00:00,2\n");
const both = file("both.csv", "time,level\n13/04/2026,2\n04/13/2026,2\n");
const serial = file("serial.csv", "time,level\n46085.5,2\n46085.75,2\n");
const digits = file("digits.csv", "time,level\n20260304120000,2\n");
const over = file("over.csv", "time,level\n0,OL\n1,N/A\n2,\n3\n");
const atRest = file("at-rest.csv", "value;at rest in/s\n4;1\n");
const unitsBelow = file("units-below.csv", "n;level in/s\n;mm/s rms\n1;3.1\n");
const commas = file("commas.csv", "time;level\n0;7,1\n");
const hole = file("hole.csv", "level\n2\n\n2\n");
const numbered = file("numbered.csv", "time,1,2\n0,2,3\n");
const comma = file("comma.csv", "value;speed\n4.1;1500\n");
const twice = file("twice.csv", "value,value\n4.1,5\n");
const headless = file("headless.csv", "4.1,5\n4.2,5\n");
const open = file("open.csv", `value\n"${"x".repeat(2 << 20)}\n`);
const titles = "scheme,edition,row,limit,as,shipped,printed,agrees,page,by,on,second,reread\n";
const confirmed = (name: string, row: string, header = titles) => file(`confirmed-${name}.csv`, `${header}${row}`);
const twiceNamed = file("twice-named.csv", "tag,words\nP-1,pump 5 kW category II\nP-1,pump 6 kW category II\n");
const oddName = file("odd-name.csv", "tag,words\n=1+1,pump 5 kW category II\n");
const good = 'iso-10816-7-2009,2009,"category I, power up to 200 kW",C/D,mm/s rms,';
const list = file("list.csv", "tag,kind\nA,fan\n");
const listUnits = file("list-units.csv", "tag,kind,trip\n,,mm/s rms\nA,fan,7\n");
const listLong = file("list-long.csv", `tag,kind\n${"A,\n".repeat(100_001)}`);
const bookless = file("bookless.xlsx", "tag,kind\nA,fan\n");
const routeList = file(
  "route-list.csv",
  "tag,kind,power,speed,nameplate,trip\nP-1,pump,90 kW,2980 r/min,category II,\nP-2,pump,,,,9 mm/s\nP-3,pump,,,,\nP-3,pump,,,,\nP\u00074,pump,,,,\n",
);
const tagged = file(
  "tagged.csv",
  "tag,reading,date,at\nP-1,3,2026-04-13,\nP-1,,2026-04-13,\nP-1,3 mm/s rms,13.04.2026,\nP-1,3 mm/s rms,2026-04-13 noon,\nP-1,3 mm/s rms,2026-04-13,25\n,3 mm/s rms,,\nP-9,3 mm/s rms,,\n",
);
const untagged = file("untagged.csv", "name,reading\nP-1,3 mm/s rms\n");
const twoTags = file("two-tags.csv", "tag,tag,reading\nP-1,P-1,3 mm/s rms\n");
const typed = file("typed.csv", "tag,DE mm/s rms,NDE mm/s rms\nP-1,3,2\n");
const contradicted = file("contradicted.csv", "tag,reading [mm/s rms],unit\nP-1,0.2 in/s pk,\nP-1,0.2,in/s pk\n");
const besideCell = file("beside-cell.csv", "tag,reading,unit\nP-1,3 mm/s rms,in/s pk\n");
const sqlAsked = "--table|readings|--column|v|--from|mm/s rms";
const book = file("book.xlsx", workbook({ plant: [["tag", "kind"]] }));
const bookLong = file("book-long.xlsx", new Uint8Array((1 << 23) + 1));
const noName = confirmed("no-name", `${good}6.5,,yes,12,,2024-03-04,,\n`);
const perhaps = confirmed("perhaps", `${good}6.5,,perhaps,12,J. Example,2024-03-04,,\n`);
const rereadNo = confirmed("reread", `${good}6.5,6.5,,12,J. Example,2024-03-04,,no\n`);
const bothSaid = confirmed("both", `${good}6.5,6.4,yes,12,J. Example,2024-03-04,,\n`);
const neither = confirmed("neither", `${good}6.5,,,12,J. Example,2024-03-04,,\n`);
const unshipped = confirmed("unshipped", `${good},,yes,12,J. Example,2024-03-04,,\n`);
const shippedWord = confirmed("shipped", `${good}six,6.5,,12,J. Example,2024-03-04,,\n`);
const printedWord = confirmed("printed", `${good}6.5,six,,12,J. Example,2024-03-04,,\n`);
const untouched = confirmed("untouched", `${good}6.5,,,,,,,\n`);
const tornOff = confirmed("torn", `${good}6.5,,yes,12,J. Example,2024-03-04,,`);
const raggedRow = confirmed("ragged", `${good}6.5,yes\n`);
const strange = confirmed("strange", "\n", "scheme,colour\n");
const doubled = confirmed("doubled", "\n", "scheme,scheme\n");
const halfHeader = confirmed("half", "\n", "scheme,edition,row\n");
const noneSigned = confirmed("none-signed", `${good}6.5,,yes,,,,,\n${good}6.5,,yes,,J. Example,2024-03-04,,\n`);
const otherUnit = confirmed("other-unit", `${good}6.5,6.3 in/s rms,,12,J. Example,2024-03-04,,\n`);
const withCommas = confirmed(
  "with-commas",
  `${good}6,5,,yes,12,J. Example,2024-03-04,,\n${good}6,5,6.3,,12,J. Example,2024-03-04,,\n`
    .replaceAll(/,(?! power|5)/g, ";")
    .replaceAll('"', ""),
  titles.replaceAll(",", ";"),
);
const struckOut = confirmed("struck", `#${good}6.5,,yes,12,J. Example,2024-03-04,,\n`);
const signature = "iso-10816-7-2009,2009,every line below,signature,";
const signedValue = confirmed("signed-value", `${signature},,,yes,12,J. Example,2024-03-04,,\n`);
const signedTwice = confirmed("signed-twice", `${`${signature},,,,12,J. Example,2024-03-04,,\n`.repeat(2)}`);
const twiceJson = file("confirmed-twice.json", '[{ "page": "12",\n  "page": "13" }]');
const noJson = file("confirmed-no.json", "{");
const oneJson = file("confirmed-one.json", "{}");
const wordJson = file("confirmed-word.json", '["agreed"]');
const readAtJson = file("confirmed-read-at.json", '[{ "readAt": "line 1" }]');
const quoted = file("quoted.csv", 'value\n4 "mm"\n');
const bare = file("bare.csv", 'place,value,remark\nID fan 1,"4,1",ok\nID fan 2,4,1\n');
const parquet = file("broken.parquet", "PAR1 and nothing else");
const stored = file("stored.csv", Buffer.from("PAR1\x15\x00\x15\x10\x15", "latin1"));
const columns = file("columns.csv", "value,tag\n");
const marked = file("marked.csv", "\ufeffvalue\n4.1\n");
const quad = file("quad.csv", Buffer.from("\ufeff\0v\0\n\0", "utf16le"));
const decimals = file("decimals.csv", "Vibration, mm/s\n4,9\n");
const unsure = file("unsure.csv", "value;tag\n4.1;x\n4.2\n");
const ragged = file("ragged.csv", "value,tag\n4.1\n#3 fan,4.2\n4.1,x\ry\n4.2,z\n");
const returned = file("returned.csv", "value\rmore,tag\n4.1,x\n");
const told = file("told.csv", "sep=,\nvalue,tag\n4.1,x\n");
const narrow = file("narrow.csv", Buffer.from("value,tag\n4.1,x\n4.2,L\xfcfter\n", "latin1"));
const wide = file("wide.csv", Buffer.from("value\n4.1\n", "utf16le"));
const nul = file("nul.csv", "value,tag\n4.1,abcdefgh\0\n");
const cut = file("cut.csv", Buffer.from("\ufeffvalue\n4.1\n", "utf16le").subarray(0, -1));
const several = file("several.csv", "value,tag,value\n4.1,x,5\n");
const pair = file("pair.csv", "value,tag,tag\n4.1,x,y\n");
const long = file("long.csv", `value\n${"1".repeat((1 << 20) + 100)}\n1\n2\n3\n`);
const endless = file("endless.csv", "1,2".repeat(2 << 20));
const signed = file("signed.csv", 'value,tag\n# remark\n"4"#,x\n');
const foreign = file(
  "foreign.json",
  JSON.stringify({
    ...{ id: "site-rule", kind: "grades", standard: "Site rule", edition: "1", title: "Rule", status: "guide" },
    ...{ statusNote: "invented", scope: "any", place: "housing", measuredOn: "housings", band: null },
    grades: ["fine", "\u2126"],
    classes: [{ criteria: [{ as: "mm/s rms", limits: { fine: 2 }, source: { title: "r", provenance: "memory" } }] }],
  }),
);
const there = file("there.csv", "kept\n");
mkdirSync(join(folder, "place"));

const lines = file("lines.csv", "Hz,mm/s rms\n10,1\n20,2\n30,1\n40,0.5\n");
const lines3 = file("lines3.csv", "Hz,r/min,mm/s rms\n10.5,600.5,1.5\n20.5,1200.5,2.5\n");
const lines4 = file("lines4.csv", "Hz,a,b\n10.5,1.5,1.5\n20.5,2.5,1.5\n");
const freqs = file("freqs.csv", "frequency,amplitude\n10,1\n20,2\n30,1\n");
const inOrders = file("orders.csv", "order,mm/s rms\n1,0.5\n2,2.5\n");
const negative = file("negative.csv", "Hz,mm/s rms\n-10,1\n20,-2\n30,x\n");
const dense = file("dense.csv", "Hz,g2/Hz,slope\n20,0.01,3\n80,0.04,\n");
const steep = file("steep.csv", "Hz,g2/Hz,slope\n20,0.01,9\n80,0.04,\n");
const behind = file("behind.csv", "Hz,g2/Hz,slope\n20,0.01,\n80,0.04,3\n");
const lone = file("lone.csv", "Hz,g2/Hz,slope\n20,,\n80,0.04,\n");
const noDensity = file("no-density.csv", "Hz,density\n20,1\n80,1\n");
const uneven = file("uneven.csv", "time [s],a\n0,1\n0.1,2\n0.25,1\n0.3,2\n0.4,1\n");
const still = file("still.csv", "time [s],a\n0,1\n0,2\n0.1,1\n");
const half = file("half.csv", "Hz,mm/s rms\n15,0.5\n25,2.5\n35,0.5\n");
const fallen = file("fallen.csv", "time [s],a\n0,1\n0.2,2\n0.1,1\n");
const serialTimes = file("serial-times.csv", "time,a\n45000.5,1\n45000.6,2\n");
const millis = file("millis.csv", "time,a\n1772600000000.5,1.5\n1772600000001.5,1.5\n");
const twoForms = file("two-forms.csv", "time [s],a\n0,1\n2026-03-04 10:00:00,2\n");
const oneTime = file("one-time.csv", "time [s],a\n0,1\n");
const twoTimes = file("two-times.csv", "time [s],a,b\n0,1,x\nnoon,2,1\n");
function wave(changed: { kind?: number; channels?: number; samples?: number[]; size?: number; head?: number }): Buffer {
  const { kind = 1, channels = 1, samples = [1, 2, 3, 2], head = 16 } = changed;
  const bytes = Buffer.alloc(28 + head + 2 * samples.length - 16 + 16);
  bytes.write("RIFF", 0, "latin1");
  bytes.write("WAVEfmt ", 8, "latin1");
  bytes.writeUInt32LE(head, 16);
  bytes.writeUInt16LE(kind, 20);
  bytes.writeUInt16LE(channels, 22);
  bytes.writeUInt32LE(100, 24);
  bytes.writeUInt16LE(16, 34);
  bytes.write("data", 20 + head, "latin1");
  bytes.writeUInt32LE(changed.size ?? 2 * samples.length, 24 + head);
  for (const [i, one] of samples.entries()) bytes.writeInt16LE(one, 28 + head + 2 * i);
  return bytes;
}
const waves = {
  good: file("good.wav", wave({})),
  pair: file("pair.wav", wave({ channels: 2 })),
  odd: file("odd.wav", wave({ kind: 7 })),
  short: file("short.wav", wave({ head: 14 })),
  cut: file("cut.wav", wave({ size: 900 })),
  rails: file("rails.wav", wave({ samples: [1, 32767] })),
  none: file("none.wav", "text and no sound"),
  empty: file("empty.wav", "RIFF____WAVE"),
  bare: file("bare.wav", "RIFF____WAVEdata____"),
};

const simulate = "simulate --threshold|9 mm/s rms|--hysteresis|8 %|--timer-resets|threshold|--from|mm/s rms|--latching";
const shock =
  "shock --threshold|9 mm/s rms|--hysteresis|8 %|--timer-resets|threshold|--delay|8|--running|2.6 mm/s rms at 1485 r/min";
const detecting = `${shock}|--detector|rms|--time-constant|1|--high-pass|10`;
const voting = `${simulate}|--delay|1|--vote|2oo2`;
const plan = "plan --threshold|9 mm/s rms|--hysteresis|8 %|--delay|8|--latching";
const overall = "overall --rate|100|--unit|g";
const table = `table ${readings}|--column|value`;

type Case = readonly [words: string, input?: string];

const args = (words: string): string[] => words.replace(/^(\w[\w-]*) /, "$1|").split("|");

// biome-ignore format: a row of a table is a line
const cases: readonly Case[] = [
  // one reading, lines of a route, a column
  ["--json|4.1"], ["4.1 mm/s"], ["--digit|3|4.1 mm/s rms"], ["4.1 mm/s rms|--digits"], ["4.1 mm/s rms|--digits|two"],
  [`--file|${route}`], [`--file|${route}|--to|in/s pk`], [`--file|${absent}|--to|in/s pk`], ["--column|2", "4.1\n"],
  ["--to|in/s pk", `${"x".repeat(2 << 20)}\n`], [`--file|${levels}|--column|levle|--from|mm/s rms|--to|in/s pk`],
  ["--to|in/s pk", "x".repeat(2 << 20)], ["--file|x.csv|4.1 mm/s rms|--to|in/s pk"], [""], ["convert"],
  [`--file|${levels}|--column|level|--from|mm/s rms|--to|in/s pk|--explain`],
  // judge
  ["--to|in/s pk", ""], ["--file|-|--to|in/s pk", "# of Monday\n"], ["judge --machine|pump 90 kW|--fail-from|B", "# of Monday\n"],
  ["judge"], ["judge 4.1 mm/s rms"], ["judge --machine|group 1 rigid"], ["judge 4.1 mm/s rms|--machine|group 1 rigid|--crest-factor|3,5"],
  [`judge 4.1 mm/s rms|--scheme|${join(folder, "absent.json")}`], [`judge 4.1 mm/s rms|--scheme|${json}`],
  ["judge 4.1 mm/s rms|--machine|group 1 rigid|--crest-factor|many"],
  ["judge DE-H 3, DE-V 2 mm/s rms|--machine|pump 90 kW|--since|1 mm/s rms"], ["judge DE-H 3, 2 mm/s rms|--machine|pump 90 kW"],
  ["judge 4.1 mm/s rms|--machine|pump 90 kW wibble|--strict"], ["judge 4.1 mm/s rms|--machine|pump 90 kW|--full|--json"], ["judge 12 mA|--machine|pump 90 kW|--loop|0 to 20 mm/s rms|--uncertainty|5 %"], ["4 mm/s rms|--loop|0 to 20 mm/s rms"], ["--column|2|--from|mA|--loop|0 to 20 mm/s rms|--to|mm/s rms"], ["judge 4 mm/s rms|--limits|2.6, 4.2 mm/s rms"], ["judge 4 mm/s rms|--limits|0.1 in/s pk, 4.2, 6.8 mm/s rms"], ["judge 4 mm/s rms|--limits|2.6, 4.2, 6.8 mm/s rms|--scheme|iso-20816-3-2022"], ["schemes --template|--json"],
  ["judge 4.9 ± 0.3 mm/s rms|--machine|pump 90 kW|--uncertainty|5 %"], ["judge 4.9 mm/s rms|--machine|pump 90 kW|--uncertainty|five"], ["judge 4.9 mm/s rms|--machine|pump 90 kW|--uncertainty|5"],
  ["judge 4.9 mm/s rms|--machine|pump 90 kW|--rule|guard band"], ["judge 4.9 ± 0.3 mm/s rms|--machine|pump 90 kW|--rule|gard band"],
  ["judge 4.9 ± 0.3 mm/s rms|--machine|pump 90 kW|--since|2 mm/s rms"], ["judge DE-H 4.9 ± 5 mm/s rms|--machine|pump 90 kW"],
  ["judge DE-H 4.9 mm/s rms|--machine|pump 90 kW|--uncertainty|5 %"], ["judge 4.9 mm/s rms|--machine|pump 90 kW|--background|1 ± 2 mm/s rms"],
  ["judge 12 mA|--loop|0 to 20 mm/s rms|--machine|pump 90 kW|--background|3.9 mA"],
  ["judge 4.9 mm/s rms|--machine|pump 90 kW|--background|DE-H 1 ± 0.1 mm/s rms"], ["judge 4.9 mm/s rms|--machine|pump 90 kW|--uncertainty|5 % (99 %)"],
  ["table --column|value|--machine|pump 90 kW", "value\n4.9 ± 0.3 mm/s rms\n"], ["table --column|value|--from|mm/s rms|--machine|pump 90 kW", "value\n4.9 ± 0.3\n"],
  // schemes
  ["schemes pump|--machine|pump"], ["schemes iso-10816-3-2010"],
  // overall
  ["overall"], [`overall ${one}|${two}`], ["overall --rate|100"], ["overall --rate|100|--unit|g"], ["overall --rate|fast|--unit|g"], ["overall --rate| |--unit|g"],
  [overall, "vel mm/s rms\n1\n2\n"], [overall, "time\n1\n2\n"], [`${overall}|--column|2|--band|20-40`, `frequency,a\n${Array.from({ length: 9 }, (_, i) => `${i},0.1\n`).join("")}`],
  [`${overall}|${two}`], [`${overall}|${two}|--column|3`], [`${overall}|${holes}|--column|2`], [`${overall}|${empty}|--column|b`], [`${overall}|${letters}`], [`${overall}|${odd}|--format|float32`],
  [`${overall}|${rails}|--format|int16|--scale|0.01`], [`${overall}|${rails}|--format|int16`], [`${overall}|${rails}|--format|int16|--scale|some`], [`${overall}|${rails}|--format|int16|--scale|0`],
  [`${overall}|${unsaid}`], [`${overall}|${unsaid}|--format|flot32`], [`${overall}|${unsaid}|--format|float32|--endian|middle`],
  [`${overall}|${one}|--band|10`], [`${overall}|${one}|--band|low-high`], [`${overall}|${one}|--band|1-high`], [`${overall}|${one}|--order|three`], [`${overall}|${one}|--band|20-40|--lines|many`],
  [`${overall}|${one}|--background|1 mm/s rms`],
  // lines, densities, records with their times, WAVE files
  ["overall --spectrum|--tones"], [`overall --spectrum|${lines}`], [`overall --spectrum|${lines}|--tones|--window|hann`], [`overall --spectrum|${lines}|--tones|--rate|10`],
  [`overall --spectrum|${lines}|--tones|--background|1 mm/s rms`], [`overall --spectrum|${lines}|--tones|--orders|2`], [`overall --spectrum|${lines}|--tones|--orders|two|--speed|10 Hz`], [`overall --spectrum|${lines}|--tones|--lines|0`], [`overall --spectrum|${lines}|--tones|--lines|few`],
  [`overall --spectrum|${lines}|--noise-bandwidth|wide`], [`overall --spectrum|${lines}|--tones|--column|1|--column|2`], [`overall --spectrum|${lines}|--tones|--column|1`], [`overall --spectrum|${lines3}|--tones`], [`overall --spectrum|${lines4}|--tones`], [`overall --spectrum|${lines}|--tones|--at-unit|r/min`],
  [`overall --spectrum|${freqs}|--tones`], [`overall --spectrum|${freqs}|--tones|--at-unit|Hz`], [`overall --spectrum|${freqs}|--tones|--at-unit|hurtz`], [`overall --spectrum|${inOrders}|--tones`], [`overall --spectrum|${negative}|--tones`], [`overall --spectrum|${lines}|--window|hann`],
  ["overall --density"], [`overall --density|${lines}`], [`overall --density|${dense}`], [`overall --density|${dense}|--slope-column|3|--unit|(mm/s)2/Hz`], [`overall --density|${noDensity}`], [`overall --density|${dense}|--speed|10 Hz`],
  [`overall --density|${steep}|--slope-column|3`], [`overall --density|${behind}|--slope-column|3`], [`overall --density|${lone}|--slope-column|3`], [`overall --density|${dense}|--slope-column|3|--band|80-20`],
  [`overall --unit|g|--tones|${one}`], [`overall --unit|g|--column|1|--column|2`, "1,2\n"], [`overall --unit|g|${two}`], [`overall --unit|g|${uneven}`], [`overall --unit|g|${uneven}|--resample`], [`overall --unit|g|${uneven}|--rate|100|--time|1`], [`overall --unit|g|${still}`], [`overall --unit|g|${oneTime}`],
  [`overall --unit|g|${twoTimes}`], [`overall --unit|g|${twoTimes}|--column|1`], [`overall --unit|g|${twoTimes}|--column|b`], [`overall --unit|g|${odd}`], [`overall --unit|g|${odd}|--rate|10|--resample`],
  [`overall --unit|g|${waves.good}`], [`overall --unit|g|${waves.good}|--scale|1|--rate|5`], [`overall --unit|g|${waves.pair}|--scale|1`], [`overall --unit|g|${waves.pair}|--scale|1|--column|3`], [`overall --unit|g|${waves.pair}|--scale|1|--column|left`],
  ...(["odd", "short", "cut", "rails", "none", "empty", "bare"] as const).map((name): Case => [`overall --unit|g|${waves[name]}|--scale|1`]),
  [`overall --spectrum|${lines}|--tones|--plot`], [`overall --spectrum|${lines}|--tones|--machine|pump 90 kW 1490 r/min category II|--fail-from|C`], [`overall --spectrum|${lines}|--tones|--fail-from|C`], [`overall --spectrum|${lines}|--tones|--to|mm/s pk`], [`overall --spectrum|${lines}|--window|hnan`], [`overall --spectrum|${half}|--window|hann|--band|10-35|--plot`],
  [`overall --density|${dense}|--slope-column|3|--band|10-40`], [`overall --unit|g|${uneven}|--column|1|--column|2|--chart|a.svg`], ["overall --unit|g|--format|parquet", "1\n"], [`overall --unit|g|${lines}|--format|parquet`], [`overall --unit|g|${fallen}`], [`overall --unit|g|${serialTimes}`], [`overall --unit|g|${millis}`], [`overall --unit|g|${twoForms}`], ["overall --unit|g", "time,a\n45000.5,1\n45000.6,2\n"],
  ["overall --unit|mm/s|--rate|4000|--machine|pump 90 kW 1490 r/min category II|--speed|740 r/min", "0\n1\n0\n-1\n".repeat(2000)], ["overall --unit|mm/s|--rate|4000|--machine|pump 90 kW 1490 r/min category II|--band|100-1000|--fail-from|D", "0\n1\n0\n-1\n".repeat(2000)],
  ["overall --unit|g|--resample", "time [s],a\n0,0\n0.1,1\n0.2,0\n0.3,1\n1.3,0\n1.4,1\n1.5,0\n1.6,1\n"], ["overall --unit|g|--rate|10|--column|2", "time [s],a\n0,0\n0.1,1\n0.2,0\n0.3,1\n0.35,0\n0.4,1\n0.6,0\n0.7,1\n0.8,0\n"], ["overall --unit|g|--rate|10|--column|2", "time [s],a\n0,0\n0.2,1\n0.1,0\n"],
  ["overall --density|--slope-column|3|--column|2", "Hz,g2/Hz,slope (dB/decade)\n20,1,0\n30,1,\n"],
  ["overall --unit|g", "time [s],a\n0,1\n0.1,2\n0.25,1\n0.3,2\n0.4,1\n"], ["overall --unit|g|--format|float32|--rate|10"], ["sum"], ["sum 2 mm/s rms"], ["sum 2 mm/s rms|1 g rms"], ["sum 2 mm/s pk|1 mm/s pk"], ["sum 95 dB|90 dB"],
  ["overall --unit|g", "time [s],a\n0,1\n0.1,2\n0.25,1\n0.3,2\n0.4,1\n"], ["overall --unit|g|--format|float32|--rate|10"], ["sum"], ["sum 2 mm/s rms"], ["sum 2 mm/s rms|1 g rms"], ["sum 2 mm/s pk|1 mm/s pk"], ["sum 1 mm/s rms|1 mm/s rms|--to|mm/s pk"], ["sum 1 mm/s rms|1 mm/s rms|--to|mm/s rms, in/s pp"], ["sum 95 dB|90 dB"],
  ["resolution"], ["resolution 25 Hz|26 Hz"], ["resolution 2 mm/s rms at 25 Hz|26 Hz|--highest|1 kHz"], ["resolution 2 mm/s rms @|26 Hz|--highest|1 kHz"], ["resolution 2 mm/s rms|26 Hz|--highest|1 kHz"], ["resolution 25 Hz|26 Hz|--highest|1 kHz|--averages|few"], ["resolution 25 Hz|26 Hz|--highest|1 kHz|--overlap|half"], ["resolution 25 Hz|26 Hz|--highest|1 kHz|--overlap|half %"],
  [`${overall}|${one}|--causal|--edges|ideal|--band|20-40`], [`${overall}|${one}|--scheme|iso-7919-3-2009|--machine|motor 3000 r/min`],
  // completion
  ["completion"], ["completion basch"],
  // setpoints
  ["setpoints --baseline|2 mm/s rms|--machine|cooling tower fan 75 kW 150 r/min"], ["setpoints --baseline|2 mm/s rms|--machine|90 kW"],
  ["setpoints"], ["setpoints --baseline|2 mm/s rms|--limits|4.5 mm/s rms"], ["setpoints --baseline|2 mm/s rms|--machine|pump|--k|three"],
  [`setpoints --file|${levels}`], [`setpoints --file|${levels}|--from|mm/s rms|--start-up|noon`], ["setpoints --baseline|2 mm/s rms|--scheme|iso-10816-3-2009|--machine|group 1 rigid|--delay|soon"],
  ["setpoints --baseline|2 mm/s rms|--scheme|iso-10816-3-2009|--machine|group 1 rigid|--sheet|pdf"], ["setpoints 2 mm/s rms"],
  [`setpoints --file|${unclosed}|--column|value|--from|mm/s rms`], [`setpoints --file|${rising}|--from|mm/s rms|--start-up|noon`],
  ["setpoints --baseline|2 mm/s rms|--scheme|none|--multiples|trip 3"], ["setpoints --baseline|2 mm/s rms|--scheme|none|--multiples|alert 3"], ["setpoints --baseline|2 mm/s rms|--machine|pump 90 kW 2980 r/min|--raised|4 times from 900 to 1400 r/min for 30 s"],
  ["setpoints --baseline|2 mm/s rms|--machine|pump 90 kW 2980 r/min|--raised|2 times from 900 to 3000 r/min for 30 s"], ["setpoints --baseline|2 mm/s rms|--machine|pump 90 kW|--raised|2 times"], ["setpoints --baseline|2 mm/s rms|--machine|pump 90 kW|--asked|9.6 mA"],
  ["setpoints --baseline|2 mm/s rms|--modes|season"], [`setpoints --file|${levels}|--from|mm/s rms|--mode|winter`], ["setpoints --file|-|--from|mm/s rms|--column|level|--modes|season|--mode|spring", "level,season\n2,summer\n2.1,summer\n2,winter\n"], ["setpoints --file|-|--from|mm/s rms|--column|level|--modes|season", "level,season\n2,summer\n2.1,summer\n2,\n"], ["setpoints --file|-|--from|mm/s rms|--column|level|--modes|load", "level,load\n2,40\n2,41\n2,42\n2,43\n3,90\n3,91\n3,92\n3,bad\n"], ["setpoints --file|-|--from|mm/s rms|--column|level|--modes|level", "level,season\n2,summer\n2.1,summer\n"],
  ["setpoints --file|-|--from|mm/s rms|--column|level|--modes|season|--scheme|none", "level,season\n2,summer\n2.1,summer\n2.2,summer\n3,winter\n3.1,winter\n3.2,winter\n"], ["setpoints --baseline|2 mm/s rms|--scheme|none|--plot|--json"], ["setpoints --baseline|2 mm/s rms|--scheme|none|--chart|a.gif"],
  ["judge 4 mm/s rms|--machine|pump 90 kW|--plot|--json"], ["judge DE-H 4, DE-V 3 mm/s rms|--machine|pump 90 kW|--plot"],
  // gap
  ["gap"], ["gap -9.8 V"], ["gap -9.8 V|--sensor|200 mV/mil"], ["gap -19.5 V|--sensor|200 mV/mil|--range|-2 to -18 V"], ["gap 9.8 V|--sensor|200 mV/mil|--range|-2 to -18 V"], ["gap -9.8 V|--sensor|100 mV/g|--range|-2 to -18 V"], ["gap -9.8 V|--sensor|200 mV/mil|--range|-2 to 18 V"], ["gap -9.8 V rms|--sensor|200 mV/mil|--range|-2 to -18 V"], ["gap -9.8 V|--sensor|200 mV/mil|--range|-2 to -18 V|--limit|10 mil"], ["gap -9.8 V|--sensor|200 mV/mil|--range|-2 to -18 V|--cold|-10.4 V|--fail-from|limit"],
  // shock and mechanical-switch
  ["shock"], [`${shock}`], [`${shock}|--detector|rms`], [`${shock}|--detector|rms|--time-constant|one`], [`${shock}|--detector|rms|--time-constant|1`], [`${shock}|--detector|rms|--time-constant|1|--high-pass|ten`],
  ["shock --threshold|2 g pk|--hysteresis|8 %|--timer-resets|threshold|--delay|2|--running|0.5 g pk at 25 Hz|--detector|peak|--time-constant|1|--high-pass|10"], [`${detecting}|--shape|half-sine`], [`${detecting}|--length|long`], [`${detecting}|--shock|20 g pk`], [`${detecting}|--shock|20 g pk|--length|11`], [`${detecting}|--shock|20 g pk|--length|long|--shape|half-sine`],
  [`${detecting}|--shock|20 mm/s pk|--length|11|--shape|half-sine`], [`${detecting}|--shock|20 g pk|--length|11|--shape|square`], [detecting.replace("2.6 mm/s rms at 1485 r/min", "12 mm/s rms at 25 Hz")], [`shock --threshold|9 mm/s rms|--hysteresis|8 %|--timer-resets|threshold|--delay|soon|--running|2 mm/s rms at 25 Hz`],
  ["mechanical-switch"], ["mechanical-switch 2 g pk"], ["mechanical-switch 2 mm/s pk|--speeds|1180 r/min"], ["mechanical-switch 2 g pk|--speeds|1180"], ["mechanical-switch 2 g pk|--limit|2 g pk"], ["mechanical-switch 2 g pk|1 g pk|--limit|7.1 mm/s rms"],
  // simulate
  ["simulate"], ["simulate --timer-resets|threshold"], ["simulate --timer-resets|treshold|--latching"], ["simulate --timer-resets|threshold|--latching"], ["simulate --timer-resets|threshold|--latching|--threshold|9 mm/s rms"],
  ["simulate --timer-resets|threshold|--latching|--threshold|9 mm/s rms|--hysteresis|8 %"], [`${simulate}|--delay|soon|--file|${levels}`], [`${simulate}|--delay|1`], [`${simulate}|--delay|1|--every|1|--column|2|--file|${headless}`],
  ["simulate --timer-resets|threshold|--latching|--threshold|9 mm/s rms|--hysteresis|8 %|--delay|1"],
  [`${simulate}|--delay|1|--file|${levels}`], [`${simulate}|--delay|1|--file|${word}`], [`${simulate}|--delay|1|--file|${noon}`], [`${simulate}|--delay|1|--file|${dotted}`], [`${simulate}|--delay|1|--file|${header}`], [`${simulate}|--delay|1|--file|${levels}|--every|often|--column|level`],
  [`${simulate}|--delay|1|--file|${levels}|--commands|reset`], [`${simulate}|--delay|1|--file|${levels}|--commands|reset at noon`], [`${simulate}|--delay|1|--file|${levels}|--multiplier|2`], [`${simulate}|--delay|1|--file|${levels}|--multiplier|two for 30`], [`${simulate}|--delay|1|--file|${levels}|--multiplier|2 for ever`],
  [`${simulate}|--delay|1|--file|${levels}|--off-delay|soon`], [`${simulate}|--delay|1|--file|${levels}|--inhibit|soon`], [`${simulate}|--delay|1|--file|${levels}|--relay|normally open`],
  [`${simulate}|--delay|,|--file|${levels}`], [`${simulate}|--delay|1|--file|${levels}|--longest-gap|long`], [`${simulate}|--delay|1|--file|${levels}|--longest-gap|0`], [`${simulate}|--delay|1|--file|${levels}|--longest-gap|5|--every|1`],
  [`${simulate}|--delay|1|--file|${mixed}`], [`simulate --threshold|6, 9 in/s pk; 6 in/s pk|--hysteresis|8 %|--timer-resets|threshold|--from|mm/s rms|--latching|--delay|1`],
  [`${simulate}|--delay|1|--file|${numbered}|--alert|5 mm/s rms`], [`${voting}`], [`${voting}|--column|a`], [`${voting.replace("--delay|1|", "--delay|1,2|")}|--column|2,3|--file|${numbered}`], [`${voting}|--column|2,3|--file|${numbered}|--skip-bad`], [`${voting}|--column|2,3|--file|${numbered}|--explain`],
  [`${voting}|--column|2,3|--file|${numbered}|--sensor-fault|bad`], [`${voting}|--column|2,3|--file|${numbered}|--alert|5 mm/s rms`], [`${voting}|--column|2,2`, "time,DE,NDE\n0,3,4\n"], [`${voting}|--column|1,2`, "time,DE,NDE\n0,3,4\n"], [`${voting}|--column|2,3`, "time,DE,DE\n0,3,4\n"], [`${voting}|--column|2,3`, "time,DE,NDE\n0,3,N/A\n"],
  ["balance|--unbalance|500 g·mm|--speed|2970 r/min|--explain"],
  ["balance|--unbalance|500 g·mm|--mass|750 kg|--speed|2970 r/min|--planes|400 mm, 900 mm"], [`${simulate}|--delay|1,2|--excursions`],
  ["simulate --threshold|6, 9 mm/s rms|--hysteresis|8 %|--timer-resets|threshold|--from|mm/s rms|--latching|--delay|1|--vote|2oo2|--column|2,3"],
  ["check|--known|8 mm/s rms|--indicated|5 mm/s rms|--indicated|7.9 mm/s rms|--tolerance|5 %"],
  [`judge 3.1 mm/s rms|--machine|motor 100 kW rigid 1485 r/min|--machine|pump 90 kW 2980 r/min category II`],
  [`${voting}|--column|2,3|--plot`], [`${voting}|--column|2,3|--chart|a.svg`],
  [`${voting}|--column|2,3|--commands|bypass on at 0`, "time,DE,NDE\n0,3,4\n"], [`${voting}|--column|2,3|--commands|bypass on DEE at 0`, "time,DE,NDE\n0,3,4\n"], [`${simulate}|--delay|1|--vote|1 danger and 1 alert of 2|--column|2,3`], [`${simulate}|--delay|1|--vote|1 danger and 1 alert of 2|--column|2,3|--alert|9 mm/s rms|--alert-delay|1`], [`${simulate}|--delay|1|--vote|1 danger and 1 alert of 2|--column|2,3|--alert|5 mm/s rms|--alert-delay|soon`],
  [`${simulate}|--delay|1`, "time,level\n08:15,3\n"], [`${simulate}|--delay|1`, "time,level\n24:00:00,3\n"], [`${simulate}|--delay|1|--commands|reset at 105`, "time,level\n100,3\n110,3\n"],
  [`${simulate}|--delay|1`, "time,DE,NDE\n0,3,4\n"], [`${simulate}|--delay|1|--column|1`, "level,time\n3,0\n"], [`${simulate}|--delay|1`, "time,level\n0,-3\n1,3\n"], [overall, "a\n1\n\n2\n"],
  // times and bad cells of a series
  [`${simulate}|--delay|1|--file|${unreal}`], [`${simulate}|--delay|1|--file|${short}`], [`${simulate}|--delay|1|--file|${either}`], [`${simulate}|--delay|1|--file|${both}`], [`${simulate}|--delay|1|--file|${serial}`], [`${simulate}|--delay|1|--file|${digits}`],
  [`${simulate}|--delay|1|--file|${serial}|--times|day-first`], [`${simulate}|--delay|1|--file|${over}`], [`${simulate}|--delay|1|--file|${over}|--skip-bad`], [`${simulate}|--delay|1|--file|${commas}`], [`${simulate}|--delay|1|--file|${commas}|--decimal-comma|--separator|comma`],
  [`${simulate}|--delay|1|--file|${dotted}|--skip-bad`], [`${simulate}|--delay|1|--file|${hole}|--every|1|--column|1`], [`${simulate}|--delay|1|--file|${hole}|--every|1|--skip-bad`], [`${simulate}|--delay|1|--file|${hole}|--every|1|--times|seconds`],
  [`setpoints --file|${over}|--from|mm/s rms`], [`setpoints --file|${over}|--from|mm/s rms|--times|seconds`], [`${overall}|${numbered}|--column|2`], [`${overall}|${commas}|--column|level`], [`${overall}|${commas}|--column|level|--waveform`],
  // plan
  ["sql"], ["sql --to|in/s pk"], ["sql --column|v"], ["sql --column|v|--from|mm/s rms"], ["sql --column|v|--from|mm/s rms|--to|in/s pk|--out|x.csv"],
  ["sql --column|v|--from|um pp|--to|mm/s rms|--speed-column|n"], ["sql --column|v|--from|g pk|--to|g rms|--crest-factor|three"],
  [`sql --column|v|--from|mm/s rms|--table|t|--name-column|tag|--machines|${twiceNamed}`],
  [`sql --column|v|--from|mm/s rms|--table|t|--name-column|tag|--machines|${oddName}|--out|${folder}/limits.csv`],
  [`sql --column|v|--from|mm/s rms|--table|t|--name-column|tag|--machines|${twiceNamed}|--out|${folder}/limits.txt`],
  [`${plan}|--payload|1,5`],
  ["plan"], ["plan --latching"], ["plan --latching|--threshold|9 mm/s rms"], ["plan --latching|--threshold|9 mm/s rms|--hysteresis|8 %"], ["plan --latching|--threshold|9 mm/s rms|--hysteresis|8 %|--delay|soon"], [plan], [`${plan}|--off-delay|soon`],
  [`${plan}|--shaker|8 Hz to 3 kHz to 5 kHz`], [`${plan}|--shaker|ten Hz`], [`${plan}|--shaker|10 mm/s rms`], [`${plan}|--shaker|ten at 10 Hz`], [`${plan}|--shaker|10 ± 3 % mm/s rms (k=2) at 159.2 Hz`], [`check --tolerance|5 %|--indicated|9 mm/s rms|--shaker|10 Hz`], [`check --tolerance|5 %|--indicated|9 mm/s rms|--shaker|10 mm/s rms at 159.2 Hz|--known|8 mm/s rms`], [`check --tolerance|5 %|--shaker|10 Hz|--from|mm/s rms`], [`${plan}|--shaker|10 Hz to 1 kHz|--force|strong`], [`${plan}|--shaker|10 Hz to 1 kHz|--load|heavy`],
  [`${plan}|--shaker|40 Hz, 80`], [`${plan}|--shaker|,`], [`${plan}|--shaker|10 mm/s rms at 80 Hz, 40 Hz to 1 kHz`], [`${plan}|--inject|V|--loop|0 to 20 mm/s rms`], [`${plan}|--inject|mA`], [`${plan}|--inject|mV`], [`${plan}|--inject|mA|--loop|0 to 20 mm/s rms|--shaker|80 Hz`], [`${plan}|--shaker|80 Hz|--final-element|breaker`], [`${plan}|--inject|mA|--loop|0 to 20 mm/s rms|--at|80 Hz`], [`${plan}|--inject|mA|--loop|0 to 20 mm/s rms|--resolution|0.1 mm/s rms`],
  [`${plan}|--shaker|80 Hz|--fact|device: serial 0417`], [`${plan}|--shaker|80 Hz|--sheet|markdown|--fact|serial 0417`], [`${plan}|--shaker|80 Hz|--sheet|markdown|--fact|device: a|--fact|device: b`],
  ["check --tolerance|5 %|--file|-|--threshold|9 mm/s rms", "known,indicated\n4 mm/s rms,4 mm/s rms\n"], ["check --tolerance|5 %|--from|mm/s rms|--loop|0 to 20 mm/s rms", "known,indicated\n4,4\n"], ["check --tolerance|5 %|--known|8 mm/s rms|--indicated|8 mm/s rms|--threshold|9 mm/s rms"],
  ["check --tolerance|5 %|--file|-", "known,indicated,frequency\n4 mm/s rms,4 mm/s rms,40\n"], ["check --tolerance|5 %|--file|-", "known,indicated,frequency (Hz),speed (r/min)\n4 mm/s rms,4 mm/s rms,40,2400\n"], ["check --tolerance|5 %|--file|-", "known,indicated,frequency (Hz)\n4 mm/s rms at 50 Hz,4 mm/s rms,40\n"], ["check --tolerance|5 %|--file|-", "known,indicated\n4,4.1\n"], ["check --tolerance|5 %|--file|-", "known,indicated\n4 mm/s rms,40 mV pk\n"], ["check --tolerance|5 %|--file|-|--known|8 mm/s rms", "known,indicated\n4 mm/s rms,4 mm/s rms\n"], ["check --tolerance|5 %|--known|8 mm/s rms|--indicated|8 mm/s rms|--chart|errors.pdf"], ["check --tolerance|5 %|--known|8 mm/s rms|--indicated|8 mm/s rms|--fact|device: serial 0417"],
  // check
  ["check"], ["check --tolerance|5 %"], ["check --tolerance|5 %|--known|8 mm/s rms"], ["check --tolerance|5 %|--file|points.csv"], [`check --tolerance|5 %|--from|mm/s rms|--file|${points}`], [`check --tolerance|5 %|--from|mm/s rms|--file|${broken}`], [`check --tolerance|5 %|--from|mm/s rms|--file|${absent}`],
  ["check --tolerance|5 %|--from|mm/s rms"],
  ["check --tolerance|5 %|--file|-", "known,indicated,tolerance\n4 mm/s rms,4 mm/s rms,1 %\n"], ["check --tolerance|5 %|--file|-|--skip-bad|--loop|0 to 20 mm/s rms", "known,indicated\n4 mm/s rms,22 mA\n"],
  ["check --tolerance|5 %|--file|-|--threshold|9 mm/s rms", "known,indicated\n4 mm/s rms,4 mm/s rms\n"], ["check --tolerance|5 %|--known|8 mm/s rms|--indicated|8 mm/s rms|--threshold|9 mm/s rms"],
  ["check --tolerance|5 %|--file|-|--loop|0 to 20 mm/s rms", "known,indicated\n4 mm/s rms,4 mm/s rms\n"], ["check --tolerance|5 %|--from|mm/s rms|--sensor|100 mV/g", "known,indicated\n4,4\n5,5\n"],
  ["check --tolerance|100 %|--known|8 mm/s rms|--indicated|8 mm/s rms"],
  // balance
  ["balance"], ["balance --mass|400 kg|--speed|1480 r/min"], ["balance G 6.3"], ["balance G 6.3|--mass|400 kg"], ["balance G 6.3|--mass|400 kg|--speed|1480 r/min|--planes|300 mm"], ["balance --force|--speed|1480 r/min"], ["balance --unbalance|2 g mm"], ["balance --unbalance|20 oz·in"], ["balance --unbalance|20 oz·in|--speed|1480 r/min|--planes|3 in, 4 in"], ["balance 4W/N|--mass|120 kg|--speed|2980 r/min|--unit|oz"],
  // table
  [`table ${levels}|--column|level|--from|mm/s rms|--to|in/s pk|--background|1 mm/s rms`], [`table ${levels}|--column|level|--from|mm/s rms|--machine|pump 90 kW category II|--background|1 mm/s rms|--background-column|1`], [`table ${atRest}|--column|1|--from|mm/s rms|--machine|pump 90 kW category II|--background-column|2`], [`table ${unitsBelow}|--column|2|--from|mm/s rms|--to|in/s pk`],
  [`table ${levels}|--column|level|--from|mm/s rms|--to|in/s pk|--explain`],
  ["table"], [`table ${readings}|${levels}|--column|value`], [table], ["table --column|value|--to|in/s pk"], [`table ${absent}|--column|value|--to|in/s pk`], [`table ${folder}|--column|value|--to|in/s pk`],
  [`${table}|--to|in/s pk|--crest-factor|many`], [`${table}|--to|in/s pk|--from|mm/s rms|--out|${readings}`], [`${table}|--to|in/s pk|--from|mm/s rms`], [`${table}|--to|in/s pk|--from|mm/s rms|--from-column|unit`], [`${table}|--to|in/s pk|--detector|rms`],
  [`${table}|--from|mm/s rms|--to|mm/s rms,mm/s rms`], [`${table}|--from|mm/s rms|--to|um pp|--at|2x`], [`${table}|--from|mm/s rms|--to|um pp|--at|1x|--speed-column|speed`], [`${table}|--from|mm/s rms|--to|um pp|--at|0x|--speed-column|speed|--speed-unit|r/min`],
  [`${table}|--from|mm/s rms|--machine-column|machine|--speed-column|speed|--speed-unit|r/min`], [`${table}|--from|mm/s rms|--machine-column|spede|--scheme|iso-2372-1974`], [`${table}|--from|mm/s rms|--speed-column|speed|--machine| `],
  [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${noName}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${perhaps}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${rereadNo}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${bothSaid}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${neither}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${unshipped}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${shippedWord}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${printedWord}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${untouched}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${tornOff}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${raggedRow}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${strange}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${doubled}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${halfHeader}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${noJson}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${oneJson}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${wordJson}`], [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${readAtJson}`],
  ...[noneSigned, otherUnit, withCommas, struckOut, signedValue, signedTwice, twiceJson].map((path): [string] => [`judge|4 mm/s rms|--machine|pump 90 kW category I|--confirmed|${path}`]),
  ["schemes|--sheet|html"], ["schemes|iso-10816-7-2009|iso-2372-1974|--sheet|html"], ["schemes|iso-10816-7-2009|--sheet|html|--json"], ["schemes|--machine|pump|--sheet|csv"],
  [`table ${comma}|--column|value|--decimal-comma|--from|mm/s rms|--to|in/s pk`], [`table ${twice}|--column|value|--from|mm/s rms|--to|in/s pk|--json`], [`table ${headless}|--column|1|--from|mm/s rms|--to|in/s pk`], [`table ${open}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${quoted}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${bare}|--column|value|--from|mm/s rms|--to|in/s pk|--decimal-comma|--separator|comma`], [`table ${header}|--column|value|--from|mm/s rms|--to|in/s pk`],
  [`table ${parquet}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${join(folder, "absent.parquet")}|--column|value|--from|mm/s rms|--to|in/s pk`], ["table --column|value|--from|mm/s rms|--to|in/s pk", "value\nmany\n"],
  [`table ${unclosed}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${blank}|--column|value|--from|mm/s rms|--machine-column|machine`], [`${table}|--from|mm/s rms|--to|um pp|--at|${"9".repeat(400)}x|--speed-column|speed`],
  [`${table}|--from|mm/s rms|--to|in/s pk|--out|${join(folder, "new.csv")}|--refused|${join(folder, "new.csv")}`],
  [`${table}|--from|mm/s rms|--to|in/s pk|--out|${there}`], [`${table}|--from|mm/s rms|--to|in/s pk|--out|${join(folder, "place")}`], [`${table}|--from|mm/s rms|--to|in/s pk|--out|${join(folder, "no", "out.csv")}`],
  // how a file is written
  [`table ${decimals}|--column|1|--from|mm/s rms|--to|in/s pk`], [`table ${unsure}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${ragged}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${returned}|--column|2|--from|mm/s rms|--to|in/s pk`],
  [`${table}|--from|mm/s rms|--to|in/s pk|--header-line|9`], [`${table}|--from|mm/s rms|--to|in/s pk|--header-line|0`], [`${table}|--from|mm/s rms|--to|in/s pk|--header-line|many`], [`table ${ragged}|--column|value|--from|mm/s rms|--to|in/s pk|--header-line|3`],
  [`${table}|--from|mm/s rms|--to|in/s pk|--remarks|x`], [`${table}|--from|mm/s rms|--to|in/s pk|--separator|comma|--decimal-comma`], [`${table}|--from|mm/s rms|--to|in/s pk|--separator|colon`],
  [`table ${told}|--column|value|--from|mm/s rms|--to|in/s pk|--separator|tab`], [`table ${told}|--column|value|--from|mm/s rms|--to|in/s pk|--decimal-comma`],
  [`table ${narrow}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${wide}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${nul}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${cut}|--column|value|--from|mm/s rms|--to|in/s pk`],
  [`table ${several}|--column|value|--from|mm/s rms|--to|in/s pk`], ["table --column|1|--from|mm/s rms|--to|in/s pk|--quotes|none|--separator|none", "Vibration, mm/s\n4.1\n"], [`table ${readings}|--column|value|--from|mm/s rms|--scheme|${foreign}|--encoding|latin-1`],
  [`table ${comma}|--column|value|--from|mm/s rms|--to|in/s pk|--at|noon`], [`table ${parquet}|--column|value|--from|mm/s rms|--to|in/s pk|--separator|tab`], ["table --column|value|--from|mm/s rms|--to|in/s pk", "value;tag\n4,1;x\n"],
  [`table ${pair}|--column|value|--from|mm/s rms|--to|in/s pk|--json`], [`table ${long}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${endless}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${signed}|--column|value|--from|mm/s rms|--to|in/s pk`],
  [`table ${parquet}|--column|value|--from|mm/s rms|--to|in/s pk|--decimal-comma`], [`table ${stored}|--column|value|--from|mm/s rms|--to|in/s pk`], [`--file|${stored}|--to|in/s pk`], [`${simulate}|--delay|1|--file|${stored}`],
  [`table ${columns}|--column|value|--from|mm/s rms|--to|in/s pk`], [`--file|${columns}|--column|value|--from|mm/s rms|--to|in/s pk`], [`table ${marked}|--column|value|--from|mm/s rms|--to|in/s pk|--encoding|latin-1`], [`table ${quad}|--column|value|--from|mm/s rms|--to|in/s pk`],
  ["--column|value|--from|mm/s rms|--to|in/s pk", "value\nmany\n"], [`--file|${ragged}|--column|value|--from|mm/s rms|--to|in/s pk`], ["--column|value|--from|mm/s rms|--to|in/s pk"], ["4.1 mm/s rms to in/s pk|--separator|tab"],
  ["--file|-|--to|in/s pk"], ["setpoints --file|-|--from|mm/s rms"], ["table --column|2|--from|mm/s rms|--to|in/s pk|--decimal-comma", 'place,value\nID fan 1,"4,1"\n'],
  // units that a file says itself
  ["table --column|1|--from|mm/s2 rms|--to|g rms", "velocity\n4.1\n"], ["table --column|1|--from|g rms|--to|m/s2 rms", "acc (1 g = 100 mV)\n4.1\n"],
  ["table --column|1|--from|mm/s rms|--to|in/s pk", "level in/s pk\n4.1\n"], ["table --column|1|--from|mm/s rms|--to|in/s pk", "value,unit\n4.1,in/s\n"], ["table --column|1|--to|in/s pk", "level mm/s\n0.2 in/s pk\n"], [`${simulate}|--delay|1`, "time,level,unit\n0,4.1,in/s\n"], [`${simulate}|--delay|1|--column|2`, "time,level,unit\n0,4.1,in/s\n"],
  [`${simulate}|--delay|1`, "mm/s,level\n0,4.1\n"], [`${simulate}|--delay|1|--times|seconds`, "t [min],level\n0,4.1\n"], [`${overall}|--column|2|--band|20-40`, `t,a\n${Array.from({ length: 20 }, (_, i) => `${i / 50},0.1\n`).join("")}`],
  ["judge 4.1 mm/s rms|--machine|motor 7,5 kW|--decimal-comma"], ["judge 4,1 mm/s rms|--machine|motor 1,480 r/min|--decimal-comma"], ["judge 4,1 mm/s rms|--machine|motor 1.100,5 kW|--decimal-comma"], ["judge 4,1,2 mm/s rms|--machine|motor 7,5 kW|--decimal-comma"],
  ...plantRefusals(file, folder),
  ["judg 4.1|mm/s|rms"], ["plant adit"], ["plant --json"], ["plant audit"], ["plant audit|-"], ["plant template|--json|--semicolon"], [`plant audit|${list}|--csv|--json`], [`plant audit|${listUnits}`], [`plant audit|${listLong}`],
  [`plant audit|${bookless}`], [`plant audit|${bookless}|--separator|comma`], [`plant audit|${book}|--worksheet|none`], [`plant audit|${bookLong}`], ["help chek"],
  ["plant judge"], [`plant judge|${routeList}`], [`plant judge|${routeList}|${tagged}`], [`plant judge|${routeList}|${untagged}`], [`plant judge|${routeList}|${twoTags}`], [`plant judge|${routeList}|${typed}`],
  [`plant judge|${routeList}|${contradicted}`], [`plant judge|${routeList}|${besideCell}`], [`plant judge|${routeList}|${tagged}|--csv|--json`], [`plant judge|${routeList}|${tagged}|--html|route.txt`],
  [`plant setpoints|${routeList}|--csv|--json`], [`sql --plant|${routeList}|${sqlAsked}|--limits-table|limits`], [`sql --plant|${routeList}|${sqlAsked}|--scheme|iso-10816-7-2009`],
  // readings as people write them, signals of points and columns
  ["3 mm/s rms at 3000 to um pp"], ["3 mm/s rms at 50 Hz to um pp|--speed-unit|r/min"], ["4 mm/s rms, speed 1485"], ["4 mm/s rms, load 80 %, load 70 %"], ["4 mm/s rms, speed 1485 r/min, speed 1480 r/min"],
  ["--to|mm/s rms|--file|-", "P-7: DE-H: 9.0, DE-V: 2.2 mm/s rms\nFan 8 at 2980 rpm:\n  DE: 4.1 mm/s rms\n"],
  ["--to|mm/s rms|--file|-", "Feed pump C:\nP-102\tDE-H\t3.1\t2.2 mm/s rms\n"],
  ["judge DE-H 3.2 mA, DE-V 12 mA|--loop|0 to 20 mm/s rms|--machine|pump 90 kW"], ["judge DE-H 0.1 ± 0.01 V pk, DE-V 2 mm/s rms|--sensor|100 mV/g|--machine|pump 90 kW"], ["judge DE-H, DE-V 12 mA of 0 to 20 mm/s rms|--machine|pump 90 kW"],
  ["table --column|v|--from|um pp|--machine-column|machine|--limits|50, 80, 120 um pp", "machine,v\nfan shaft,61\n"],
  ["judge DE-H 4 mm/s rms, DE-V 2 mm/s rms|--limits|2, 4 mm/s rms"],
  ["table --column|1|--from|mA|--loop|0 to 20 mm/s rms|--to|mm/s rms", "level\n3.7\n"], ["table --column|1|--to|mm/s rms|--loop|0 to 20 mm/s rms", "level\n20.8 mA\n"], ["table --column|1|--from|mm/s rms|--to|in/s pk|--sensor|100 mV/g", "level\n4.1\n"], ["table --column|1|--from|mV pk at 80 Hz|--to|in/s pk|--sensor|100 mV/g", "level\n98\n"],
  ["table --column|1|--from|mV pk|--sensor|100 mV/g|--to|g pk", "level (V)\n98\n"], ["table --column|1|--from|mV pk|--sensor|100 mV/g|--to|g pk", "Volts pk\n98\n"],
  ["table --column|1|--machine|pump 250 kW 2980 r/min category I", "level\n2.1 mm/s rms (above range)\n"], ["table --column|1|--from|mm/s rms|--to|in/s pk", "level\nOL\n"], ["table --column|1|--from|mA|--loop|0 to 20 mm/s rms|--to|mm/s rms", "level\n20.5\n"],
  ["judge --machine|pump 250 kW 2980 r/min category I", "> 20 mm/s rms\n"],
  ["judge --machine|pump 250 kW 2980 r/min category I", "#3 brg: 22 mm/s rms\n"], ["--to|mm/s rms|--file|-", "#3 brg: 22 mm/s rms\nFan 1485 U/min: 40 um pp\n"],
  [`${simulate}|--delay|1|--loop|0 to 20 mm/s rms`, "time,level\n0,4.1\n"],
  ["setpoints --baseline|2 mm/s rms|--limits|4.5 mm/s rms|--machine|pump 1180 r/min"],
  ["setpoints --baseline|2 mm/s rms|--limits|5, 4.2, 6.8 mm/s rms"], ["setpoints --baseline|2 mm/s rms|--limits|2; 4,5 mm/s rms"], ["setpoints --baseline|2 mm/s rms|--limits|4.2, 6.8 mm/s rms|--scheme|iso-20816-3-2022"],
  // exit codes and pictures
  [`${simulate}|--delay|1,2|--plot`, "time,level\n0,4\n1,5\n"], [`${overall}|--plot|--json`, "1\n2\n1\n2\n"],
  ["judge 4.1 mm/s rms|--machine|pump 90 kW category II|--fail-from|E"], ["judge 4.1 mm/s rms|--scheme|compressor-handbook-rule|--machine|screw compressor|--fail-from|C"], [`${overall}|--fail-from|C`, "1\n2\n1\n2\n"],
  [`table ${levels}|--column|level|--from|mm/s rms|--to|in/s pk|--fail-from|C`], [`table ${levels}|--column|level|--from|mm/s rms|--machine|screw compressor|--scheme|compressor-handbook-rule|--fail-from|C`],
  ["judge 4.1 mm/s rms|--machine|pump 90 kW category II|--chart|verdict.gif"], ["judge 4.1 mm/s rms|--machine|pump 90 kW category II|--replace"], ["judge DE-H 3.1, DE-V 2.2 mm/s rms|--machine|pump 90 kW category II|--chart|verdict.svg"],
  ["judge --machine|pump 90 kW category II|--chart|verdict.svg", "4.1 mm/s rms\n"], [`${simulate}|--delay|1,2|--chart|history.svg`, "time,level\n0,4\n1,5\n"], [`judge 4.1 mm/s rms|--machine|pump 90 kW category II|--chart|${folder}/no/verdict.svg`],
  ...plantReportCases(folder),
];

/** What the command prints of each case, with what it was given. */
export async function printedOf(veladis: typeof run): Promise<string[]> {
  const entries: string[] = [];
  for (const [words, input] of cases) {
    const { err, code } = await veladis(words === "" ? ["--json", ""] : args(words), input);
    const told = args(words).map((word) => (/[ ]/.test(word) || word === "" ? `"${word}"` : word));
    entries.push(`$ veladis ${told.join(" ")}${input === undefined ? "" : "   (piped)"}\n${err}exit ${code}\n`);
  }
  return entries;
}
