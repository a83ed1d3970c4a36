import { VeladisError } from "../../core/index";
import { builtInSchemes, countLimits, inListOrder, type Scheme, schemesFor, selectSchemes } from "../../severity/index";
import type { Io } from "../input/io";
import { confirmedOption } from "../options/confirmed-option";
import { namedScheme } from "../options/named-scheme";
import type { ParsedOptions, Values } from "../options/option-row";
import { requireAlone } from "../options/parsed-arguments";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { type JudgedSelection, schemeList, selectionText } from "../print/scheme-list";
import { schemePage } from "../print/scheme-page";
import { schemeTemplate } from "../print/scheme-template";
import type { schemesPage } from "./schemes-page";

/** The schemes for a machine, and which of them `judge` uses, or why it refuses to judge. */
function judgedSelection(machine: string, schemes: readonly Scheme[]): JudgedSelection {
  const { candidates, ...others } = selectSchemes(machine, schemes);
  const marked = (used: readonly string[]) => candidates.map((one) => ({ ...one, judges: used.includes(one.scheme) }));
  try {
    const used = schemesFor(machine, { place: "either", schemes }).map(({ scheme }) => scheme.id);
    return { ...others, candidates: marked(used) };
  } catch (error) {
    if (error instanceof VeladisError) return { ...others, candidates: marked([]), refusal: error.message };
    throw error;
  }
}

/** Refuses what a check sheet has no place for. */
function requireSheetAlone({ json, machine }: Values<typeof schemesPage.options>): void {
  if (!json && machine === undefined) return;
  throw new VeladisError("unknown-option", {
    expected: "--sheet with nothing but schemes by name",
    received: json ? "--json too" : "--machine too",
  });
}

/** Refuses what the template of a scheme has no place for. */
function requireTemplateAlone(values: Values<typeof schemesPage.options>, texts: readonly string[]): void {
  const { all, confirmed, json, machine, sheet } = values;
  if (texts.length === 0 && !all && !json && confirmed.length === 0 && (machine ?? sheet) === undefined) return;
  throw new VeladisError("unknown-option", {
    expected: "--template alone: it prints a file with a scheme to be filled in",
    received: "more beside it",
    option: "template",
  });
}

/** The schemes that are named, by their ids or as files. */
function namedSchemes(names: readonly string[], all: readonly Scheme[]): Promise<Scheme[]> {
  return Promise.all(names.map((name) => namedScheme(name, all)));
}

/** The check sheet of a scheme for paper, or the file of confirmations of schemes, ready to be filled in. */
async function sheetOf(format: "html" | "csv", texts: readonly string[], all: readonly Scheme[]): Promise<string> {
  const schemes = await namedSchemes(texts, all);
  const [first, ...more] = schemes;
  if (first === undefined || (format === "html" && more.length > 0)) {
    throw new VeladisError(first === undefined ? "missing-option" : "unknown-option", {
      expected: `${format === "html" ? "one scheme" : "a scheme"} by name, as in veladis schemes iso-10816-7-2009 --sheet ${format}`,
      received: first === undefined ? "nothing" : `${texts.length} schemes`,
    });
  }
  if (format === "csv") return (await import("../input/confirmations-csv")).confirmationsCsv(schemes);
  const { confirmationSheet, sheetHtml } = await import("../../report/index");
  return sheetHtml(confirmationSheet(first));
}

/** Lists the schemes, prints some in full, or lists those for a machine. */
export async function printSchemes(
  { values, texts }: ParsedOptions<typeof schemesPage.options>,
  io: Io,
): Promise<number> {
  if (values.template) {
    requireTemplateAlone(values, texts);
    await io.out(schemeTemplate());
    return exitCodes.done;
  }
  const all = (await confirmedOption(values.confirmed, io, values.json, texts)) ?? builtInSchemes;
  if (values.sheet !== undefined) {
    requireSheetAlone(values);
    await io.out(await sheetOf(values.sheet, texts, all));
    return exitCodes.done;
  }
  if (values.machine !== undefined) {
    requireAlone("machine", texts);
    const selection = judgedSelection(values.machine, all);
    const rows = selection.candidates.map((one) => jsonLine("candidate", one));
    const others = values.all ? selection.excluded.map((one) => jsonLine("excluded", one)) : [];
    await io.out(values.json ? [...rows, ...others].join("") : selectionText(selection, values.all));
  } else if (texts.length > 0) {
    const schemes = await namedSchemes(texts, all);
    await io.out(
      values.json ? schemes.map((one) => jsonLine("scheme", one)).join("") : schemes.map(schemePage).join("\n"),
    );
  } else if (values.json) {
    const rows = countLimits(inListOrder(all)).schemes.map(({ scheme, ...counts }) => {
      const { id, kind, standard, edition, title, status, replacedBy, place, scope } = scheme;
      const told = { id, kind, standard, edition, title, status, place, scope, ...counts };
      return jsonLine("scheme summary", replacedBy === undefined ? told : { ...told, replacedBy });
    });
    await io.out(rows.join(""));
  } else {
    await io.out(schemeList(all));
  }
  return exitCodes.done;
}
