import { counted, inPlace, requireGiven, requireKnownOptions, withParameters } from "../core/index";
import { daysBetween, requireDay } from "./calendar";
import { type ChangeChain, type ChangeEnd, changeChain, changesBySetting } from "./change-chain";
import { type ChangeFinding, cellWords, changeFinding, entryWords } from "./change-finding";
import { type ChangeRule, changeRules, LONG_BYPASS_DAYS } from "./change-rules";
import { type PlantColumn, plantColumns } from "./columns";
import { rowsByTag } from "./compared-tag";
import type { PlantChange } from "./plant-change";
import type { CalendarDay, Plant, PlantMachine } from "./plant-machine";
import { requireChanges } from "./require-changes";
import { requirePlant } from "./require-plant";
import { isSameCell } from "./same-cell";

/** For which day {@link auditChanges} answers. */
export interface ChangeAuditOptions {
  /** The day, e.g. `"2026-12-01"`. */
  readonly on: CalendarDay;
  /** The list as it was before the first entry; with it a change that nobody ever recorded is found too. */
  readonly before?: Plant;
}

const keys: Readonly<Record<keyof ChangeAuditOptions, true>> = /* @__PURE__ */ Object.freeze({
  on: true,
  before: true,
});

/** Columns that a person sets; what a check writes is no setting. */
const settingColumns = /* @__PURE__ */ (() =>
  (Object.keys(plantColumns) as readonly PlantColumn[]).filter(
    (column) =>
      column !== "tag" &&
      (plantColumns[column].group !== "check" || column === "tolerance" || column === "interval months"),
  ))();

/** What the entries of one machine are held against. */
interface Held {
  readonly on: CalendarDay;
  readonly machine: PlantMachine;
  /** Its row before the first entry. */
  readonly was: PlantMachine | undefined;
}

function machinesByTag(plant: Plant, parameter: string): ReadonlyMap<string, readonly PlantMachine[]> {
  const found = new Map<string, PlantMachine[]>();
  for (const one of requirePlant(plant, parameter).machines) {
    const before = found.get(one.tag);
    if (before === undefined) found.set(one.tag, [one]);
    else before.push(one);
  }
  return found;
}

/** What is wrong with an entry by itself. */
function ofEntry(
  change: PlantChange,
  at: Pick<PlantMachine, "tag" | "line">,
  on: CalendarDay,
): readonly ChangeFinding[] {
  const { date, putBack, approvedBy, who, setting, new: now } = change;
  const entry = `${entryWords(change)}, ${setting}`;
  const found: ChangeFinding[] = [];
  const ahead = [date, putBack].find((day) => day !== undefined && daysBetween(on, day) > 0);
  if (ahead !== undefined) found.push(changeFinding("in the future", at, `${entry}: ${ahead} is after ${on}`));
  const isLifting = setting === "bypass" && now.trim() === "";
  if (approvedBy === undefined && !isLifting) {
    const code = setting === "bypass" ? "bypass not approved" : "not approved";
    found.push(changeFinding(code, at, `${entry}: approved by is empty`));
  } else if (approvedBy?.trim().toLowerCase() === who.trim().toLowerCase()) {
    found.push(changeFinding("approved by oneself", at, `${entry}: ${who} made it and approved it`));
  }
  return found;
}

/** What is wrong with the end of an entry that had to have one. */
function ofEnd({ change, ended, isBack }: ChangeEnd, { on, machine }: Held): readonly ChangeFinding[] {
  const { setting, until, old, new: now } = change;
  const isBypass = setting === "bypass";
  const what = isBypass ? `bypass of ${cellWords(now)}` : `${setting} ${cellWords(old)} to ${cellWords(now)}`;
  const say = (code: ChangeRule, how: string): readonly ChangeFinding[] => [
    changeFinding(code, machine, `${what}, ${how}: ${entryWords(change)}`),
  ];
  const stands = ended === null || daysBetween(on, ended) > 0;
  // an entry of a day that lies ahead is told as that, and stands for nothing yet
  if (daysBetween(on, change.date) > 0 && until !== undefined) return [];
  if (until === undefined) return stands ? say("bypass without expiry", "no until and not lifted") : [];
  const over = daysBetween(until, stands ? on : ended);
  if (stands && over > 0) {
    return say(
      isBypass ? "bypass expired" : "never put back",
      `until ${until}, ${counted(over, "day")} ago, not put back`,
    );
  }
  const planned = daysBetween(change.date, until);
  if (stands && isBypass && planned > LONG_BYPASS_DAYS) {
    return [
      ...say("long bypass", `until ${until}, ${counted(planned, "day")} from its first`),
      ...say("bypassed now", `until ${until}`),
    ];
  }
  if (stands) return say(isBypass ? "bypassed now" : "stands for a time", `until ${until}`);
  if (!isBack) return say("replaced, not put back", `until ${until}, replaced on ${ended}`);
  return over > 0 ? say("ended late", `until ${until}, put back ${ended}, ${counted(over, "day")} late`) : [];
}

/** What of the list differs from what the record says last. */
function ofList({ last, lastChange: change }: ChangeChain, { machine }: Held): readonly ChangeFinding[] {
  if (change === undefined || change.setting === "bypass") return [];
  if (machine.cells === undefined) return [changeFinding("no cells", machine, entryWords(change))];
  const now = machine.cells[change.setting] ?? "";
  if (isSameCell(change.setting, now, last)) return [];
  const what = `${change.setting} is ${cellWords(now)} in the list, and ${cellWords(last)} by ${entryWords(change)}`;
  return [changeFinding("changed without a record", machine, what)];
}

function ofChain(changes: readonly PlantChange[], held: Held): readonly ChangeFinding[] {
  const { setting } = changes[0] as PlantChange;
  const { machine, was } = held;
  const start = setting === "bypass" ? "" : was?.cells === undefined ? undefined : (was.cells[setting] ?? "");
  const chain = changeChain(changes, start);
  const broken = chain.breaks.map(({ change, on, before, says }) =>
    changeFinding(
      "broken chain",
      machine,
      `${setting} was ${cellWords(says)} on ${on} by ${entryWords(change)}, and ${cellWords(before)} by what was recorded before`,
    ),
  );
  return [...broken, ...ofList(chain, held), ...chain.ends.flatMap((end) => ofEnd(end, held))];
}

/** Settings of which no entry is kept, and that are not what they were. */
function neverRecorded(
  machine: PlantMachine,
  was: PlantMachine,
  changed: ReadonlySet<string>,
): readonly ChangeFinding[] {
  const { tag, cells = {} } = machine;
  return settingColumns.flatMap((column) => {
    const [old, now] = [was.cells?.[column] ?? "", cells[column] ?? ""];
    if (changed.has(JSON.stringify([tag, column])) || isSameCell(column, old, now)) return [];
    const what = `${column} is ${cellWords(now)} in the list and was ${cellWords(old)}; the record has no entry on it`;
    return [changeFinding("changed without a record", machine, what)];
  });
}

/** The one machine that an entry is on, or why there is none. */
function machineOf(
  tag: string,
  machines: readonly PlantMachine[] = [],
  refused: ReadonlySet<string>,
): PlantMachine | ChangeRule {
  const [machine, another] = machines;
  if (another !== undefined) return "tag of several rows";
  return machine ?? (refused.has(tag) ? "refused row" : "unknown tag");
}

/**
 * What a record of changes and a list say against each other: changed without a record, bypassed after its expiry or without
 * one, never put back, not approved, in the future, on a machine that is not there. Worst first, then as in the list.
 *
 * The entries on one setting are followed by day; on one day in the order in which they fit together. What the list held
 * before the first entry is not known without `before`: a change is then found only where an entry on that setting is
 * left. A bypass that was opened and lifted in one row leaves no trace where that row is taken out. Results of checks are
 * no settings, and are not held against it.
 *
 * @throws {@link VeladisError} `missing-option`, `syntax` and `out-of-range` for a day that is none, `unknown-option`
 * @example
 * ```ts
 * import { auditChanges, changeTitles, parseChanges, parsePlant } from "veladis/plant";
 *
 * const plant = parsePlant({ heading: ["tag", "kind", "trip"], rows: [["LU-01", "fan", "9 mm/s rms"]] });
 * const raised = ["2026-10-01", "LU-01", "trip", "8 mm/s rms", "9 mm/s rms", "trial run", "shift B", "plant engineer", "2026-10-31", ""];
 * const bypass = ["2026-11-30", "LU-01", "bypass", "", "trip", "sensor is changed", "shift B", "", "2026-12-02", ""];
 * const { changes } = parseChanges({ heading: changeTitles, rows: [raised, bypass] });
 * auditChanges(plant, changes, { on: "2026-12-01" }).map(({ severity, code }) => `${severity}: ${code}`);
 * // => ["error: bypass not approved", "error: never put back", "note: bypassed now"]
 * ```
 */
export function auditChanges(
  plant: Plant,
  changes: readonly PlantChange[],
  options: ChangeAuditOptions,
): readonly ChangeFinding[] {
  return withParameters({ plant, changes, options }, () => {
    const { on, before } = requireKnownOptions(options, keys, {
      what: "an option of the audit of changes",
      form: 'options such as { on: "2026-12-01" }',
      place: { parameter: "options" },
    });
    requireDay(requireGiven(on, "the day asked for", { option: "on" }), "the day asked for", { option: "on" });
    requireChanges(changes);
    const machines = machinesByTag(plant, "plant");
    const alike = rowsByTag(plant.machines);
    const was =
      before === undefined
        ? new Map<string, readonly PlantMachine[]>()
        : inPlace({ parameter: "options", option: "before" }, () => machinesByTag(before, "options.before"));
    const refused = new Set(plant.refused.map(({ tag }) => tag));
    const found: ChangeFinding[] = [];
    for (const change of changes) {
      found.push(...ofEntry(change, machines.get(change.tag)?.[0] ?? { tag: change.tag, line: 0 }, on));
    }
    for (const group of changesBySetting(changes)) {
      const first = group[0] as PlantChange;
      const machine = machineOf(first.tag, alike.get(first.tag), refused);
      if (typeof machine !== "string") found.push(...ofChain(group, { on, machine, was: was.get(first.tag)?.[0] }));
      else found.push(changeFinding(machine, { tag: first.tag, line: 0 }, `${first.setting}, ${entryWords(first)}`));
    }
    const changed = new Set(changes.map(({ tag, setting }) => JSON.stringify([tag, setting])));
    for (const [tag, [old]] of was) {
      const [machine] = machines.get(tag) ?? [];
      if (machine !== undefined && old !== undefined) found.push(...neverRecorded(machine, old, changed));
      else if (!refused.has(tag)) {
        found.push(
          changeFinding("machine gone", { tag, line: 0 }, `it stood at line ${old?.line} of the list as it was before`),
        );
      }
    }
    const order = Object.keys(changeRules);
    const severities = ["error", "warning", "note"] as const;
    const rank = ({ severity }: ChangeFinding): number => severities.indexOf(severity);
    return Object.freeze(
      found.sort((a, b) => rank(a) - rank(b) || a.line - b.line || order.indexOf(a.code) - order.indexOf(b.code)),
    );
  });
}
