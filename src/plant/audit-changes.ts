import { counted, requireGiven, requireKnownOptions, requireList, withParameters } from "../core/index";
import { daysBetween, requireDay } from "./calendar";
import { type ChangeChain, type ChangeEnd, changeChain } from "./change-chain";
import { cellWords, changeFinding, entryWords } from "./change-finding";
import { changeRules } from "./change-rules";
import { type PlantColumn, plantColumns } from "./columns";
import type { PlantFinding } from "./finding";
import { findingGrades } from "./finding";
import type { PlantChange } from "./plant-change";
import type { CalendarDay, Plant, PlantMachine } from "./plant-machine";
import { PRACTICE } from "./practice";
import { isSameCell } from "./same-cell";

/** For which day {@link auditChanges} answers. */
export interface ChangeAuditOptions {
  /** The day, e.g. `"2026-12-01"`. */
  readonly on: CalendarDay;
  /** The list as it was before the first entry; with it a change that nobody ever recorded is found too. */
  readonly before?: Plant;
}

const keys: Readonly<Record<keyof ChangeAuditOptions, true>> = /* @__PURE__ */ Object.freeze({ on: true, before: true });

/** Columns that a person sets; those of a check are written by the check. */
const settingColumns = /* @__PURE__ */ (() =>
  (Object.keys(plantColumns) as readonly PlantColumn[]).filter(
    (column) => column !== "tag" && (plantColumns[column].group !== "check" || column === "tolerance" || column === "interval months"),
  ))();

/** What the entries of one machine are held against. */
interface Held {
  readonly on: CalendarDay;
  readonly machine: PlantMachine;
  /** Its row before the first entry. */
  readonly was: PlantMachine | undefined;
}

function machinesByTag(plant: Plant, parameter: string): ReadonlyMap<string, PlantMachine> {
  const { machines } = requireGiven(plant, "a plant with its machines", { parameter });
  return new Map(
    requireList(machines, "the machines of a plant", { parameter, option: "machines" }).map((one) => [one.tag, one]),
  );
}

/** A bypass of one thing has nothing to do with that of another. */
function keyOf({ tag, setting, old, new: now }: PlantChange): string {
  const of = setting === "bypass" ? (now.trim() || old.trim()).toLowerCase() : "";
  return JSON.stringify([tag, setting, of]);
}

/** Entries by what they are on, in their order. */
function grouped(changes: readonly PlantChange[]): readonly (readonly PlantChange[])[] {
  const groups = new Map<string, PlantChange[]>();
  for (const change of changes) {
    const group = groups.get(keyOf(change));
    if (group === undefined) groups.set(keyOf(change), [change]);
    else group.push(change);
  }
  return [...groups.values()];
}

/** What is wrong with an entry by itself. */
function ofEntry(change: PlantChange, machine: PlantMachine | undefined, on: CalendarDay): readonly PlantFinding[] {
  const { date, putBack, approvedBy, who, setting, new: now } = change;
  const at = entryWords(change);
  const found: PlantFinding[] = [];
  const ahead = [date, putBack].find((day) => day !== undefined && daysBetween(on, day) > 0);
  if (ahead !== undefined) found.push(changeFinding("in the future", change, machine, `${at}: ${ahead} is after ${on}`));
  const isLifting = setting === "bypass" && now.trim() === "";
  if (approvedBy === undefined && !isLifting) {
    const rule = setting === "bypass" ? "bypass not approved" : "not approved";
    found.push(changeFinding(rule, change, machine, `${at}, ${setting}: approved by is empty`));
  } else if (approvedBy?.trim().toLowerCase() === who.trim().toLowerCase()) {
    found.push(changeFinding("approved by oneself", change, machine, `${at}, ${setting}: ${who} made it and approved it`));
  }
  return found;
}

/** What is wrong with the end of an entry that had to have one. */
function ofEnd({ change, ended, isBack }: ChangeEnd, { on, machine }: Held): readonly PlantFinding[] {
  const { setting, until, old, new: now } = change;
  const isBypass = setting === "bypass";
  const say = (rule: Parameters<typeof changeFinding>[0], why: string): readonly PlantFinding[] => [
    changeFinding(rule, change, machine, `${entryWords(change)}: ${isBypass ? `bypass of ${cellWords(now)}` : `${setting} ${cellWords(old)} to ${cellWords(now)}`}, ${why}`),
  ];
  const stands = ended === null || daysBetween(on, ended) > 0;
  if (until === undefined) return stands ? say("bypass without expiry", "no until, and not lifted") : [];
  const over = daysBetween(until, stands ? on : (ended as CalendarDay));
  if (stands) {
    const late = `until ${until}, ${counted(over, "day")} ago, not put back`;
    if (over > 0) return say(isBypass ? "bypass expired" : "never put back", late);
    return say(isBypass ? "bypassed now" : "stands for a time", `until ${until}`);
  }
  if (!isBack) return say("replaced, not put back", `until ${until}, replaced on ${ended}`);
  return over > 0 ? say("ended late", `until ${until}, put back ${ended}, ${counted(over, "day")} late`) : [];
}

/** What of the list differs from what the record says last. */
function ofList({ last, lastChange: change }: ChangeChain, { machine }: Held): readonly PlantFinding[] {
  if (change === undefined || change.setting === "bypass") return [];
  if (machine.cells === undefined) return [changeFinding("no cells", change, machine, entryWords(change))];
  const now = machine.cells[change.setting] ?? "";
  if (isSameCell(change.setting, now, last)) return [];
  const why = `${change.setting} is ${cellWords(now)} in the list, and ${cellWords(last)} by ${entryWords(change)}`;
  return [changeFinding("changed without a record", change, machine, why)];
}

function ofChain(changes: readonly PlantChange[], held: Held): readonly PlantFinding[] {
  const { setting } = changes[0] as PlantChange;
  const { machine, was } = held;
  const start = setting === "bypass" ? "" : was?.cells === undefined ? undefined : (was.cells[setting] ?? "");
  const chain = changeChain(changes, start);
  const broken = chain.breaks.map(({ change, on, before, says }) =>
    changeFinding("broken chain", change, machine, `${entryWords(change)}: on ${on} ${setting} was ${cellWords(says)} by it, and ${cellWords(before)} by what was recorded before`),
  );
  return [...broken, ...ofList(chain, held), ...chain.ends.flatMap((end) => ofEnd(end, held))];
}

/** Settings of which no entry is kept, and that are not what they were. */
function neverRecorded(machine: PlantMachine, was: PlantMachine, changed: ReadonlySet<string>): readonly PlantFinding[] {
  const { tag, line, cells = {} } = machine;
  return settingColumns.flatMap((column) => {
    const [old, now] = [was.cells?.[column] ?? "", cells[column] ?? ""];
    if (changed.has(JSON.stringify([tag, column])) || isSameCell(column, old, now)) return [];
    const why = `${column} is ${cellWords(now)} in the list and was ${cellWords(old)}; the record has no entry on it`;
    const { grade, what, mend } = changeRules["changed without a record"];
    return [Object.freeze({ tag, line, column, grade, what, why, source: PRACTICE, mend })];
  });
}

/** A machine that the list had before the first entry and has no more. */
function goneOf({ tag, line }: PlantMachine): readonly PlantFinding[] {
  const { grade, what, mend } = changeRules["machine gone"];
  const why = `it stood at line ${line} of the list as it was before`;
  return [Object.freeze({ tag, line: 0, grade, what, why, source: PRACTICE, mend })];
}

/**
 * What a record of changes and a list say against each other: changed without a record, bypassed after its expiry or without
 * one, never put back, not approved, in the future, on a machine that is not there. The gravest first, then as in the list.
 *
 * The entries on one setting are followed by day; on one day in the order in which they fit together. What the list held
 * before the first entry is not known without `before`: a change is then found only where an entry on that setting is
 * left. Results of checks are no settings, and are not held against it.
 *
 * @throws {@link VeladisError} `missing-option`, `syntax` and `out-of-range` for a day that is none, `unknown-option`
 */
export function auditChanges(
  plant: Plant,
  changes: readonly PlantChange[],
  options: ChangeAuditOptions,
): readonly PlantFinding[] {
  return withParameters({ plant, changes, options }, () => {
    const { on, before } = requireKnownOptions(options, keys, {
      what: "an option of the audit of changes",
      form: 'options such as { on: "2026-12-01" }',
      place: { parameter: "options" },
    });
    requireDay(requireGiven(on, "the day asked for", { option: "on" }), "the day asked for", { option: "on" });
    requireList(changes, "the entries of a record of changes", { parameter: "changes" });
    const machines = machinesByTag(plant, "plant");
    const was = before === undefined ? new Map<string, PlantMachine>() : machinesByTag(before, "options");
    const refused = new Set(plant.refused.map(({ tag }) => tag));
    const found: PlantFinding[] = [];
    for (const change of changes) found.push(...ofEntry(change, machines.get(change.tag), on));
    for (const group of grouped(changes)) {
      const first = group[0] as PlantChange;
      const machine = machines.get(first.tag);
      if (machine !== undefined) found.push(...ofChain(group, { on, machine, was: was.get(first.tag) }));
      else {
        const rule = refused.has(first.tag) ? "refused row" : "unknown tag";
        found.push(changeFinding(rule, first, undefined, entryWords(first)));
      }
    }
    const changed = new Set(changes.map(({ tag, setting }) => JSON.stringify([tag, setting])));
    for (const [tag, old] of was) {
      const machine = machines.get(tag);
      if (machine !== undefined) found.push(...neverRecorded(machine, old, changed));
      else if (!refused.has(tag)) found.push(...goneOf(old));
    }
    const rank = ({ grade }: PlantFinding): number => findingGrades.indexOf(grade);
    return Object.freeze(found.sort((a, b) => rank(a) - rank(b) || a.line - b.line));
  });
}
