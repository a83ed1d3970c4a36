import { basename } from "node:path";
import { counted, shown, VeladisError } from "../../core/index";
import { type JudgedRoute, judgeRoute, type RefusedReading } from "../../plant/index";
import { isOrWorse } from "../../severity/index";
import { accountText } from "../delimited/account-text";
import { writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { type FailFrom, isZoneReached, requireNoGrades } from "../options/fail-from";
import type { ParsedOptions, Values } from "../options/option-row";
import { digitsOf } from "../options/option-values";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { refusedReadingText } from "../print/refused-reading-text";
import { routeCsv } from "../print/route-csv";
import { routeHtml } from "../print/route-html";
import { routeBeside, routeText } from "../print/route-text";
import { tellUnread } from "../print/unread-columns";
import { type RouteFile, type RouteSettings, routeFile } from "../table/route-file";
import { wholeFile } from "../table/whole-file";
import { listedPlant } from "./listed-plant";
import type { plantJudgePage } from "./plant-judge-page";

type Said = Values<typeof plantJudgePage.options>;

/** Refused rows that are told one by one; of more the number. */
const MOST_TOLD = 100;

/** Refuses two forms of an answer where one is printed. */
function requireOneForm({ csv, json, html }: Said): void {
  if (csv && json) {
    throw new VeladisError("unknown-option", { expected: "one of --csv and --json", received: "both", option: "csv" });
  }
  if (html !== undefined && !/\.html?$/i.test(html)) {
    throw new VeladisError("unknown-option", {
      expected: "a file that ends in .html",
      received: shown(html),
      option: "html",
    });
  }
}

function jsonOf({ verdicts, bases, refused, unread, pointsUnread, cautions }: JudgedRoute): string {
  return [
    ...verdicts.map((one) => jsonLine("route verdict", one)),
    ...bases.map((one, basis) => jsonLine("route basis", one, { number: basis })),
    ...refused.map((one) => jsonLine("refused reading", one)),
    `${JSON.stringify({ unread, pointsUnread, cautions })}\n`,
  ].join("");
}

/** Tells on standard error what became of the rows of a route, and those that were refused. */
function tellRoute(
  {
    file,
    read,
    refused,
  }: { readonly file: string; readonly read: RouteFile; readonly refused: readonly RefusedReading[] },
  io: Io,
  json: boolean,
): void {
  for (const one of refused.slice(0, MOST_TOLD)) io.err(refusedReadingText(one, file, json));
  if (refused.length > MOST_TOLD && !json)
    io.err(`veladis: ${counted(refused.length - MOST_TOLD, "row")} more refused\n`);
  tellUnread(file, read, io, json);
  const answered = read.route.length + read.refused.length - refused.length;
  io.err(accountText(read.account, { answered, refused: refused.length }, json));
}

/** Whether a possible zone of any reading, or one that is beyond its range, reaches the named one. */
function isReached(from: FailFrom | undefined, { verdicts, refused, bases }: JudgedRoute): boolean {
  if (from === undefined) return false;
  for (const { kind, schemes } of bases) requireNoGrades([kind], schemes.join(" + "));
  return (
    verdicts.some((one) => isZoneReached(from, { kind: one.kind, worst: one.worst, isOpen: isOrWorse(one) })) ||
    refused.some(({ code, from }) => code === "sensor-fault" && from === "route")
  );
}

/** Judges a route of readings by the list of a plant. */
export async function printRoute(given: ParsedOptions<typeof plantJudgePage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  requireOneForm(values);
  const digits = digitsOf(values.digits);
  const [list, route] = texts;
  if (list === undefined || route === undefined) {
    throw new VeladisError("missing-option", {
      expected: "the list and the route, as in veladis plant judge plant.csv route.csv",
      received: list === undefined ? "nothing" : "one file",
    });
  }
  const { json, before: earlier, at, column, dates, html } = values;
  const { plant, schemes } = await listedPlant(given, list, io);
  const as = writtenAs(values);
  const settings: Omit<RouteSettings, "from"> = { as, column, at, dates };
  const now = await routeFile(route, { ...settings, from: "route" });
  const before = earlier === undefined ? undefined : await routeFile(earlier, { ...settings, from: "before" });
  const found = judgeRoute(plant, now.route, {
    ...(before !== undefined && { before: before.route }),
    ...(schemes !== undefined && { schemes }),
  });
  const byLine = (a: RefusedReading, b: RefusedReading): number => a.line - b.line;
  const refusedIn = (name: RefusedReading["from"], read: RouteFile | undefined): readonly RefusedReading[] =>
    [...(read?.refused ?? []), ...found.refused.filter((one) => one.from === name)].sort(byLine);
  const refused = { route: refusedIn("route", now), before: refusedIn("before", before) };
  const isNamed = new Set(refused.route.map(({ tag }) => tag).filter((tag) => tag !== ""));
  const judged: JudgedRoute = {
    ...found,
    refused: [...refused.route, ...refused.before],
    // a row that could not be read names its machine all the same
    unread: found.unread.filter(({ tag }) => !isNamed.has(tag)),
  };
  tellRoute({ file: route, read: now, refused: refused.route }, io, json);
  if (before !== undefined && earlier !== undefined)
    tellRoute({ file: earlier, read: before, refused: refused.before }, io, json);
  const reached = isReached(values["fail-from"], judged);
  if (html !== undefined) {
    const page = await wholeFile(html, values.replace, [list, route, earlier, ...values.scheme, ...values.confirmed]);
    try {
      await page.write(Buffer.from(routeHtml(judged, { file: basename(route), digits })));
      await page.commit();
    } catch (error) {
      await page.discard();
      throw error;
    }
  }
  if (values.csv) {
    io.err(routeBeside(judged));
    for (const portion of routeCsv(judged)) await io.out(Buffer.from(portion));
  } else await io.out(json ? jsonOf(judged) : routeText(judged, digits));
  if ((judged.refused.length > 0 || plant.refused.length > 0) && !values["keep-going"]) return exitCodes.refused;
  if (reached) return exitCodes.reached;
  // a gate is not to pass where no reading was judged
  return values["fail-from"] !== undefined && judged.verdicts.length === 0 ? exitCodes.refused : exitCodes.done;
}
