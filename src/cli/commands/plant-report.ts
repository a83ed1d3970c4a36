import { basename, extname, join } from "node:path";
import { counted, inPlace, jsonText, VeladisError, visibleText } from "../../core/index";
import {
  auditChanges,
  auditPlant,
  type ChangeFinding,
  calendarDay,
  dueChecks,
  judgeRoute,
  type PlantChange,
  type PlantFinding,
  parseChanges,
  type RefusedReading,
  type RefusedRow,
} from "../../plant/index";
import { accountText } from "../delimited/account-text";
import { type WrittenAs, writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { delimitedRows } from "../input/plant-file";
import type { ParsedOptions } from "../options/option-row";
import { requireOption } from "../options/option-values";
import { type HistoryFile, historiesOfFile, historiesOfRoutes, historyFiles } from "../plant-report/histories-of";
import { gravities, type ReportFinding, type ReportHistory } from "../plant-report/machine-report";
import { PAGE_MARK } from "../plant-report/page-frame";
import type { ReportHead } from "../plant-report/report-head";
import { reportOfMachine } from "../plant-report/report-of-machine";
import { INDEX, reportPages } from "../plant-report/report-pages";
import { routesInOrder } from "../plant-report/routes-in-order";
import { standingsOf } from "../plant-report/standings-of";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { failureText } from "../print/failure";
import { refusedText } from "../print/plant-file-text";
import { tellUnread } from "../print/unread-columns";
import { type RouteFile, routeFile } from "../table/route-file";
import { wholeFolder } from "../table/whole-folder";
import { listedPlant } from "./listed-plant";
import type { plantReportPage } from "./plant-report-page";

type GivenReport = ParsedOptions<typeof plantReportPage.options>;

/** The day of the calendar on this computer. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => `${part}`.padStart(2, "0")).join("-");
}

/** What was refused in the files of a report, as the index names it. */
type Refused = ReportHead["refused"][number];

/** Tells who runs the command what is refused, and keeps it for the index. */
class Told {
  readonly refused: Refused[] = [];

  constructor(
    private readonly io: Io,
    private readonly json: boolean,
  ) {}

  /** Rows of the list, which were told as it was read. */
  listed(file: string, all: readonly RefusedRow[]): void {
    for (const row of all) this.refused.push({ file: basename(file), ...row });
  }

  /** Rows of a file that goes with the list. */
  rows(file: string, all: readonly RefusedRow[]): void {
    for (const row of all) this.io.err(refusedText(row, file, this.json));
    this.listed(file, all);
  }

  /** A file of a history that cannot be read. */
  history({ path, tag }: HistoryFile, error: unknown): void {
    this.io.err(failureText(error, this.json, { file: path }));
    const { code, message } = error as VeladisError;
    this.refused.push({ file: basename(path), line: 0, tag, code, message });
  }

  /** Readings of a route that were refused. */
  readings(file: string, all: readonly RefusedReading[]): void {
    for (const { line, tag, column, code, message, expected, received, didYouMean } of all) {
      const error = new VeladisError(code as VeladisError["code"], {
        expected,
        received,
        ...(didYouMean && { didYouMean }),
      });
      this.io.err(failureText(error, this.json, { file, line }));
      this.refused.push({ file: basename(file), line, tag, code, message, ...(column !== undefined && { column }) });
    }
  }
}

/** What was written, in words. */
function writtenText({
  index,
  machines,
  findings,
}: {
  index: string;
  machines: number;
  findings: Readonly<Record<string, number>>;
}): string {
  const found = Object.entries(findings).map(([what, count]) => counted(count, what.replace(/s$/, "")));
  return `${visibleText(`${counted(machines, "machine")}, ${found.join(", ")}: ${index}`)}\n${cautionsText()}`;
}

/** Whether a finding is as grave as the named one. */
function isFailed(from: (typeof gravities)[number] | undefined, findings: readonly ReportFinding[]): boolean {
  const least = from === undefined ? -1 : gravities.indexOf(from);
  return findings.some(({ gravity }) => gravities.indexOf(gravity) <= least);
}

/** The path in what is told of a history: `TAG=file`, or the path alone. */
function pathOf(written: string): string {
  return written.slice(written.indexOf("=") + 1);
}

/** The histories of a file; of one that cannot be read that it is not drawn. */
async function historyOf(file: HistoryFile, as: WrittenAs, told: Told): Promise<readonly ReportHistory[]> {
  try {
    return await historiesOfFile(file, as);
  } catch (error) {
    if (!VeladisError.is(error)) throw error;
    told.history(file, error);
    const name = basename(file.path);
    return [{ name, as: "", readings: [], notes: [`${name} is not drawn: ${error.message}`] }];
  }
}

/** A route with the name of its file. */
interface NamedRoute {
  readonly file: string;
  readonly read: RouteFile;
}

/** The routes in the order of their days, what they refuse told. */
async function routesOf({ values, texts }: GivenReport, io: Io, told: Told): Promise<readonly NamedRoute[]> {
  const { column, at, dates, json } = values;
  const given: NamedRoute[] = [];
  for (const file of texts.slice(1)) {
    given.push({ file, read: await routeFile(file, { as: writtenAs(values), column, at, dates, from: "before" }) });
  }
  const routes = routesInOrder(given).map(({ file, read }, i): NamedRoute => {
    if (i < given.length - 1) return { file, read };
    return { file, read: { ...read, refused: read.refused.map((one) => ({ ...one, from: "route" })) } };
  });
  for (const { file, read } of routes) {
    told.readings(file, read.refused);
    tellUnread(file, read, io, json);
    io.err(accountText(read.account, { answered: read.route.length, refused: read.refused.length }, json));
  }
  return routes;
}

/** The record of changes, its refused rows told; none where none was given. */
async function changesOf({ values }: GivenReport, io: Io, told: Told): Promise<readonly PlantChange[] | undefined> {
  const { changes: file, dates, json } = values;
  if (file === undefined) return undefined;
  const as = writtenAs(values);
  const { account, refused: torn, ...table } = await delimitedRows(io, file, as);
  const options = { ...(dates !== undefined && { dates }), ...(as.decimalComma && { decimal: "," as const }) };
  const { changes, refused } = parseChanges(table, options);
  const all = [...torn, ...refused].sort((a, b) => a.line - b.line);
  const lines = new Set(all.map(({ line }) => line)).size;
  told.rows(file, all);
  if (account !== undefined) io.err(accountText(account, { answered: changes.length, refused: lines }, json));
  return changes;
}

/** A finding of the audit or of the record of changes, as a report tells it. */
function ofFinding(one: PlantFinding | ChangeFinding): ReportFinding {
  const { line, tag, severity, code, what, why, mend, source } = one;
  return { line, tag, gravity: severity, name: code, what, why, mend, source };
}

/** Writes pages on a plant into a folder. */
export async function printReport(given: GivenReport, io: Io): Promise<number> {
  const { values, texts } = given;
  const { replace, json, history, name } = values;
  const out = requireOption(given, "out");
  const on = inPlace({ option: "on" }, () => calendarDay(values.on ?? today(), values.dates));
  const { plant, schemes, file } = await listedPlant(given, texts[0], io);
  const told = new Told(io, json);
  told.listed(file, plant.refused);
  const histories = await historyFiles(history, plant);
  const inputs = [...texts, ...history.map(pathOf), ...(values.changes === undefined ? [] : [values.changes])];
  const folder = await wholeFolder(out, { replace, mark: PAGE_MARK, inputs });
  try {
    const routes = await routesOf(given, io, told);
    const changes = await changesOf(given, io, told);
    const [last, before] = [routes.at(-1), routes.at(-2)];
    const choice = schemes === undefined ? {} : { schemes };
    const judged =
      last && judgeRoute(plant, last.read.route, { ...choice, ...(before && { before: before.read.route }) });
    for (const [from, one] of [["route", last] as const, ["before", before] as const]) {
      const own = judged?.refused.filter((refused) => refused.from === from) ?? [];
      if (one !== undefined) told.readings(one.file, own);
    }
    // those that the reader of the file refused count as those that the judge did
    const route = judged && {
      ...judged,
      refused: [...judged.refused, ...(last?.read.refused ?? []), ...(before?.read.refused ?? [])],
    };
    const audit = auditPlant(plant, { on, ...choice });
    const findings = [...audit.findings, ...(changes === undefined ? [] : auditChanges(plant, changes, { on }))].map(
      ofFinding,
    );
    const standings = standingsOf({ plant, route, findings, due: dueChecks(plant, { on }) });
    const drawn = historiesOfRoutes(routes.map(({ read }) => read.route));
    const head: ReportHead = {
      name: name ?? basename(file, extname(file)),
      on,
      from: inputs.map((path) => basename(path)),
      refused: told.refused,
      strangers: findings.filter(({ line }) => line === 0).map(({ tag, what, why }) => `${tag}: ${what}; ${why}`),
    };
    const { notChecked } = audit;
    const beside = { plant, schemes, notChecked, changes: changes ?? [], refused: route?.refused ?? [] };
    const pages = reportPages(head, standings, async (standing) => {
      const { tag } = standing.machine;
      const own = histories.filter((one) => one.tag === tag);
      const files = await Promise.all(own.map((one) => historyOf(one, writtenAs(values), told)));
      return reportOfMachine(standing, { ...beside, histories: [...files.flat(), ...(drawn.get(tag) ?? [])] });
    });
    let written = 0;
    for await (const page of pages) {
      await folder.write(page.name, page.text);
      written++;
      if (written % 50 === 0) io.progress?.(`${written} of ${standings.length + 1} pages`);
    }
    io.progress?.("");
    await folder.commit();
    const count = (gravity: string): number => findings.filter((one) => one.gravity === gravity).length;
    const counts = { errors: count("error"), warnings: count("warning"), notes: count("note") };
    const answer = {
      folder: out,
      index: join(out, INDEX),
      pages: written,
      machines: standings.length,
      findings: counts,
    };
    await io.out(json ? `${jsonText({ ...answer, refused: told.refused })}\n` : writtenText(answer));
    if (told.refused.length > 0 && !values["keep-going"]) return exitCodes.refused;
    return isFailed(values["fail-on"], findings) ? exitCodes.reached : exitCodes.done;
  } catch (error) {
    await folder.discard();
    throw error;
  }
}
