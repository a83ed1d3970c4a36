import {
  auditChanges,
  benchRound,
  changeCautions,
  changeTitles,
  doubtfulPeriods,
  dueChecks,
  parseChanges,
  parsePlant,
  resultTitles,
  takeResults,
} from "veladis/plant";
import { requireDay } from "../../src/plant/calendar";
import { namedCells, namedColumns } from "../../src/plant/named-cells";
import { changeOfCells } from "../../src/plant/parse-changes";
import { resultOfCells } from "../../src/plant/taken-result";
import type { Cases } from "../refusals/refused";
import { plantOf, sound } from "./lists";

const plant = plantOf({}, { tag: "TWO" }, { tag: "TWO" }, { tag: "BARE", tolerance: "" });
const broken = parsePlant({ heading: ["tag", "kind", "trip"], rows: [["BAD", "fan", "9"]] });
const on = "2026-12-01";

/** The refusal of a row of a record, of which the answer holds the message. */
const change = (cells: Partial<Record<(typeof changeTitles)[number], string>>) => {
  const row = {
    ...{ date: on, tag: "LU-01", setting: "trip", old: "9 mm/s rms", new: "8 mm/s rms", reason: "baseline" },
    ...{ who: "shift B", "approved by": "engineer", until: "", "put back": "", ...cells },
  };
  for (const { error } of changeOfCells(row, 2, {}).refused) throw error;
};

/** The refusal of a result, of which the answer holds the message. */
const result = (cells: Partial<Record<(typeof resultTitles)[number], string>>, of = plant) => {
  const row = {
    ...{ number: "LU-01-2026-12-01", tag: "LU-01", date: on, known: "8 mm/s rms", "as found": "8 mm/s rms" },
    ...{ "as left": "", tolerance: "", by: "shift B", ...cells },
  };
  resultOfCells(row, 2, { plant: of, options: { on }, before: new Map() });
};
const numbered = (tag: string) => ({ number: `${tag}-2026-12-01`, tag });

/** What is refused of checks, of results and of a record of changes. */
export const checkRefusals: Cases = {
  "a day in another form": () => requireDay("1.12.2026", "the day asked for"),
  "a day that there is not": () => requireDay("2026-02-30", "the day asked for"),
  "checks, no day": () => dueChecks(plant, {} as never),
  "checks, an option there is none of": () => dueChecks(plant, { on, before: on } as never),
  "checks, days ahead below zero": () => dueChecks(plant, { on, ahead: -1 }),
  "checks, no plant": () => dueChecks(undefined as never, { on }),
  "checks, a plant of another form": () => dueChecks({ machines: [{}] } as never, { on }),
  "checks, an interval of zero": () =>
    dueChecks({ ...plant, machines: [{ ...plant.machines[0], interval: 0 }] } as never, { on }),
  "checks, an interval of centuries": () =>
    dueChecks({ ...plant, machines: [{ ...plant.machines[0], interval: 1e6 }] } as never, { on }),
  "checks, a day that is none": () => dueChecks(plant, { on: "2026-02-30" }),
  "checks, a day with blanks in the list": () =>
    dueChecks({ ...plant, machines: [{ ...plant.machines[0], check: { date: " 2026-03-31" } }] } as never, { on }),
  "a round, a day that is none": () => benchRound(plant, [], { lowest: "8 Hz", highest: "1 kHz" }, { on: "soon" }),
  "results, a day that is none": () => takeResults(plant, { heading: resultTitles, rows: [] }, { on: "soon" }),
  "changes, a day that is none": () => auditChanges(plant, [], { on: "soon" }),
  "a result with a tolerance without unit": () => result({ tolerance: "5" }),
  "a round, a frequency of no shaker": () =>
    benchRound(plant, [], { lowest: "8 Hz", highest: "1 kHz" }, { on, frequencies: ["1e9 Hz"] }),
  "a round, no day": () => benchRound(plant, [], { lowest: "8 Hz", highest: "1 kHz" }, {} as never),
  "a round, an option there is none of": () =>
    benchRound(plant, [], { lowest: "8 Hz", highest: "1 kHz" }, { on, at: "80 Hz" } as never),
  "a round, frequencies, no list": () =>
    benchRound(plant, [], { lowest: "8 Hz", highest: "1 kHz" }, { on, frequencies: "80 Hz" as never }),
  "a file, a line that is none": () => parseChanges({ heading: changeTitles, rows: [[]], lines: [Number.NaN] }),
  "a round, no shaker": () => benchRound(plant, [], undefined as never, { on }),
  "a round, no checks": () => benchRound(plant, undefined as never, { lowest: "8 Hz", highest: "1 kHz" }, { on }),
  "a round, checks of another form": () =>
    benchRound(plant, [{}] as never, { lowest: "8 Hz", highest: "1 kHz" }, { on }),
  "a file, a heading that is nearly one": () =>
    namedColumns([...resultTitles, "as fond"], resultTitles, "results of checks"),
  "a file, a heading twice": () => namedColumns([...resultTitles, "Tag"], resultTitles, "results of checks"),
  "a file, without a column": () => namedColumns(["tag"], ["tag", "date"], "results of checks"),
  "a file, a torn row": () => namedCells(["LU-01"], ["tag", "date"], new Map([["tag", 0]])),
  "results, no day": () => takeResults(plant, { heading: resultTitles, rows: [] }, {} as never),
  "results, an option there is none of": () =>
    takeResults(plant, { heading: resultTitles, rows: [] }, { on, day: on } as never),
  "a result without a reading": () => result({ "as found": "" }),
  "a number that is none": () => result({ number: "LU-01" }),
  "a number of another tag": () => result({ tag: "LU-02" }),
  "a tag of two rows": () => result(numbered("TWO")),
  "a tag that there is not": () => result(numbered("LU-9")),
  "a tag whose row was refused": () => result(numbered("BAD"), broken),
  "a result ahead": () => result({ date: "2026-12-02" }),
  "a result before the last check": () => result({ number: "LU-01-2025-12-01", date: sound["check date"] as string }),
  "a result before its round": () => result({ date: sound["check date"] as string }),
  "a number of an earlier round": () => result({ number: "LU-01-2025-12-01" }),
  "a result without a tolerance": () => result(numbered("BARE")),
  "a result with another tolerance": () => result({ tolerance: "20 %" }),
  "doubt, no plant": () => doubtfulPeriods(null as never),
  "doubt, results of another form": () => doubtfulPeriods(plant, [{}] as never),
  "doubt, no results": () => doubtfulPeriods(plant, null as never),
  "record, an option there is none of": () => parseChanges({ heading: changeTitles, rows: [] }, { day: on } as never),
  "record, a day that is none": () => change({ date: "soon" }),
  "record, no reason": () => change({ reason: "" }),
  "record, a setting there is none of": () => change({ setting: "tripp" }),
  "record, a value without a unit": () => change({ new: "8" }),
  "record, nothing changed": () => change({ new: "9.0 mm/s rms" }),
  "record, nothing in both": () => change({ old: "", new: "" }),
  "record, a bypass of two things": () => change({ setting: "bypass" }),
  "record, a bypass of nothing": () => change({ setting: "bypass", old: "", new: "" }),
  "record, a bypass of what protects nothing": () => change({ setting: "bypass", old: "", new: "banana" }),
  "record, a tag with an invisible sign": () => change({ tag: "LU\u200b-01" }),
  "record, a lifted bypass with an expiry": () =>
    change({ setting: "bypass", old: "trip", new: "", until: "2026-12-02" }),
  "record, a lifted bypass that is put back": () =>
    change({ setting: "bypass", old: "trip", new: "", "put back": "2026-12-02" }),
  "record, over before it began": () => change({ until: "2026-11-30" }),
  "record, put back before it began": () => change({ "put back": "2026-11-30" }),
  "changes, no day": () => auditChanges(plant, [], {} as never),
  "changes, an option there is none of": () => auditChanges(plant, [], { on, day: on } as never),
  "changes, none": () => auditChanges(plant, undefined as never, { on }),
  "changes, of another form": () => auditChanges(plant, [{ line: 2 }] as never, { on }),
  "cautions, of no entry": () => changeCautions(undefined as never),
  "cautions, of another setting": () =>
    changeCautions({
      line: 2,
      date: on,
      tag: "A",
      setting: "colour",
      old: "",
      new: "red",
      reason: "x",
      who: "B",
    } as never),
};
