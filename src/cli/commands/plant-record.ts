import { VeladisError } from "../../core/index";
import { auditChanges, type CalendarDay, type ChangeFinding, calendarDay, type Plant, parseChanges, type RefusedRow } from "../../plant/index";
import { writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { delimitedRows, plantOfFile } from "../input/plant-file";
import type { ParsedOptions } from "../options/option-row";
import type { plantFileOptions } from "../options/plant-options";
import type { recordOptions } from "../options/record-options";
import { refusedText } from "../print/plant-file-text";

/** What a command that holds a record of changes against a list is given. */
type GivenRecord = ParsedOptions<
  typeof recordOptions & typeof plantFileOptions & { readonly json: { readonly help: string } }
>["values"] & { readonly on: string | undefined };

/** What a record of changes says against a list, and its rows that were refused. */
export interface RecordAudit {
  readonly findings: readonly ChangeFinding[];
  readonly refused: readonly RefusedRow[];
}

const NONE: RecordAudit = Object.freeze({ findings: [], refused: [] });

/** The list as it was before the first entry. */
async function listBefore(values: GivenRecord, io: Io): Promise<Plant | undefined> {
  const { before, own, dates, worksheet, json } = values;
  if (before === undefined) return undefined;
  const options = { own, ...(dates !== undefined && { dates }) };
  const { plant } = await plantOfFile(io, { file: before, as: writtenAs(values), worksheet }, options);
  for (const row of plant.refused) io.err(refusedText(row, before, json));
  return plant;
}

/**
 * The record of changes that `--changes` names, held against the list; nothing where it names none.
 *
 * @throws {@link VeladisError} `missing-option` without the day, and for a file that cannot be read
 */
export async function recordAudit(values: GivenRecord, plant: Plant, io: Io): Promise<RecordAudit> {
  const { changes: file, before, on, dates, json } = values;
  if (file === undefined) {
    if (before === undefined) return NONE;
    throw new VeladisError("missing-option", { expected: "--changes beside --before", received: "--before alone", option: "changes" });
  }
  if (on === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--on beside --changes: the day by which bypasses and changes for a time are over",
      received: "nothing",
      option: "on",
    });
  }
  const day: CalendarDay = calendarDay(on, dates);
  const as = writtenAs(values);
  const { refused: torn, account: _, ...table } = await delimitedRows(io, file, as);
  const record = parseChanges(table, {
    ...(as.decimalComma && { decimal: "," }),
    ...(dates !== undefined && { dates }),
  });
  const refused = [...record.refused, ...torn].sort((a, b) => a.line - b.line);
  for (const row of refused) io.err(refusedText(row, file, json));
  const was = await listBefore(values, io);
  const findings = auditChanges(plant, record.changes, { on: day, ...(was !== undefined && { before: was }) });
  return { findings, refused };
}
