import { nearest, shown, VeladisError } from "../../core/index";
import {
  type ChangeCells,
  changeCautions,
  changeChain,
  changeOfCells,
  changesBySetting,
  daysBetween,
  isSameCell,
  LONG_BYPASS_DAYS,
  type PlantChange,
  type PlantMachine,
  rowsByTag,
} from "../../plant/index";
import { writtenAs } from "../delimited/written-as";
import { appended } from "../input/append-row";
import { type ChangeFile, changeFile } from "../input/change-file";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { requireOption } from "../options/option-values";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { changeText } from "../print/plant-change-text";
import { refusedText } from "../print/plant-file-text";
import { listedPlant } from "./listed-plant";
import type { plantChangePage } from "./plant-change-page";

type GivenChange = ParsedOptions<typeof plantChangePage.options>;

/** The cells of the entry that the options tell. */
function cellsOf(given: GivenChange): ChangeCells {
  const { values } = given;
  return {
    date: requireOption(given, "date"),
    tag: requireOption(given, "tag"),
    setting: requireOption(given, "setting"),
    old: values.old ?? "",
    new: values.new ?? "",
    reason: requireOption(given, "reason"),
    who: requireOption(given, "who"),
    "approved by": values["approved-by"] ?? "",
    until: values.until ?? "",
    "put back": values["put-back"] ?? "",
  };
}

/** The entry; refused where a cell is, and a bypass without approval and expiry. */
function entryOf(cells: ChangeCells, line: number, { values }: GivenChange): PlantChange {
  const decimal = values["decimal-comma"] ? { decimal: "," as const } : {};
  const dates = values.dates === undefined ? {} : { dates: values.dates };
  const { change, refused } = changeOfCells(cells, line, { ...decimal, ...dates });
  const [first] = refused;
  if (change === undefined)
    throw Object.assign(first?.error as VeladisError, { option: first?.column?.replace(" ", "-") });
  if (change.setting !== "bypass" || change.new === "") return change;
  for (const [option, value] of [
    ["approved-by", change.approvedBy],
    ["until", change.until],
  ] as const) {
    if (value !== undefined) continue;
    throw new VeladisError("missing-option", {
      expected: `--${option} for a bypass: without it nobody answers for it`,
      received: "nothing",
      option,
    });
  }
  return change;
}

/** What an entry says that is not what the record says stands there. */
function requireGoingOn(change: PlantChange, { record }: ChangeFile): void {
  const group = changesBySetting([...record.changes, change]).find((one) =>
    one.includes(change),
  ) as readonly PlantChange[];
  const start = change.setting === "bypass" ? "" : undefined;
  const breaks = (of: readonly PlantChange[]) => changeChain(of, start).breaks;
  const found = breaks(group);
  const fault = found.find((one) => one.change === change) ?? found.at(-1);
  if (fault === undefined || found.length <= breaks(group.filter((one) => one !== change)).length) return;
  const stands = fault.before === "" ? "nothing" : fault.before;
  if (change.setting === "bypass") {
    throw new VeladisError("out-of-range", {
      expected: `an entry that goes on from the record, by which ${stands} of ${change.tag} is bypassed then`,
      received: change.new === "" ? `its bypass of ${change.old} lifted` : `a bypass of ${change.new}`,
      option: "old",
    });
  }
  throw new VeladisError("out-of-range", {
    expected: `an entry that goes on from the record: ${change.setting} of ${change.tag} is ${stands} by it; a change without an entry is entered first`,
    received: fault.says === "" ? "nothing" : fault.says,
    option: "old",
  });
}

/** Refuses a tag that the record writes another way: its entries would be followed apart. */
function requireOneSpelling({ tag }: PlantChange, { record }: ChangeFile): void {
  const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, "");
  const other = record.changes.find((one) => one.tag !== tag && plain(one.tag) === plain(tag));
  if (other === undefined) return;
  throw new VeladisError("unknown-option", {
    expected: `the tag as line ${other.line} of the record writes it, or --list to tell that both are machines of the list`,
    received: shown(tag),
    didYouMean: [other.tag],
    option: "tag",
  });
}

/** What an entry says that the list does not have. */
function requireListed(change: PlantChange, machines: readonly PlantMachine[]): void {
  const { tag, setting, old, new: now } = change;
  const [machine, another] = rowsByTag(machines).get(tag) ?? [];
  if (machine === undefined || another !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: "the tag of one machine in the list",
      received: machine === undefined ? shown(tag) : `${shown(tag)}, of lines ${machine.line} and ${another?.line}`,
      didYouMean: nearest(tag, new Set(machines.map((one) => one.tag))),
      option: "tag",
    });
  }
  if (setting === "bypass") return;
  const cell = machine.cells?.[setting] ?? "";
  if (isSameCell(setting, cell, old) || isSameCell(setting, cell, now)) return;
  throw new VeladisError("out-of-range", {
    expected: `${setting} of ${tag} as the list has it, ${cell === "" ? "nothing" : cell}, before or after the change`,
    received: `${old === "" ? "nothing" : old} to ${now === "" ? "nothing" : now}`,
    option: "old",
  });
}

function longBypass({ setting, date, until, new: now }: PlantChange): boolean {
  return setting === "bypass" && now !== "" && until !== undefined && daysBetween(date, until) > LONG_BYPASS_DAYS;
}

/** Adds an entry to the record of changes. */
export async function addChange(given: GivenChange, io: Io): Promise<number> {
  const { values, texts } = given;
  const [path] = texts;
  if (path === undefined || path === "-") {
    throw new VeladisError("missing-option", {
      expected: "the file with the record of changes, such as plant-changes.csv",
      received: path ?? "nothing",
    });
  }
  const cells = cellsOf(given);
  const as = writtenAs(values);
  const file = await changeFile(path, as, values.dates);
  for (const row of file.record.refused) io.err(refusedText(row, path, values.json));
  const change = entryOf(cells, file.line, given);
  if (values.list === undefined) requireOneSpelling(change, file);
  requireGoingOn(change, file);
  if (values.list !== undefined) requireListed(change, (await listedPlant(given, values.list, io)).plant.machines);
  const bytes = file.bytesOf(cells);
  if (!values["dry-run"]) await appended(path, file, bytes);
  const remarks = [
    ...(values.list === undefined
      ? ["not held against a list: --list tells one"]
      : change.setting === "bypass"
        ? []
        : ["the list is not changed by this: change its cell too"]),
    ...(longBypass(change)
      ? ["a bypass of more than 30 days: the audit warns of it (common practice, no source)"]
      : []),
    ...(change.approvedBy === undefined && change.new !== ""
      ? ["nobody approved it: the audit names it until someone does"]
      : []),
    ...(file.record.refused.length > 0
      ? [`rows of the record that were refused: ${file.record.refused.length}; the entry was held against the others`]
      : []),
  ];
  const cautions = changeCautions(change);
  if (values.json) await io.out(jsonLine("plant change", change, { written: !values["dry-run"], remarks, cautions }));
  else await io.out(changeText(change, values["dry-run"] ? undefined : path, remarks, cautions));
  return exitCodes.done;
}
