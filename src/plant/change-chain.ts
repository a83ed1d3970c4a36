import type { PlantChange } from "./plant-change";
import type { CalendarDay } from "./plant-machine";
import { isSameCell } from "./same-cell";

/** A bypass of one thing has nothing to do with that of another. */
function keyOf({ tag, setting, old, new: now }: PlantChange): string {
  const of = setting === "bypass" ? (now.trim() || old.trim()).toLowerCase() : "";
  return JSON.stringify([tag, setting, of]);
}

/** Entries by what they are on, in their order. */
export function changesBySetting(changes: readonly PlantChange[]): readonly (readonly PlantChange[])[] {
  const groups = new Map<string, PlantChange[]>();
  for (const change of changes) {
    const group = groups.get(keyOf(change));
    if (group === undefined) groups.set(keyOf(change), [change]);
    else group.push(change);
  }
  return [...groups.values()];
}

/** A moment at which something was changed: an entry, or its being put back. */
interface Turn {
  readonly on: CalendarDay;
  readonly from: string;
  readonly to: string;
  readonly change: PlantChange;
  readonly isBack: boolean;
}

/** A place at which the entries of a setting do not fit together. */
interface ChainBreak {
  readonly change: PlantChange;
  readonly on: CalendarDay;
  /** What stood there before by the record. */
  readonly before: string;
  /** What the entry says stood there before. */
  readonly says: string;
}

/** An entry that had to end, and when and how it did. */
export interface ChangeEnd {
  readonly change: PlantChange;
  /** Null while it stands. */
  readonly ended: CalendarDay | null;
  /** Whether the old state came back, and not a third one. */
  readonly isBack: boolean;
}

/** The entries on one setting of one machine, followed from the first to the last. */
export interface ChangeChain {
  readonly breaks: readonly ChainBreak[];
  readonly ends: readonly ChangeEnd[];
  /** What stands there by the record. */
  readonly last: string;
  /** The entry that says so. */
  readonly lastChange: PlantChange | undefined;
}

/** Whether two states of what the entries are on are the same. */
function isSame(change: PlantChange, one: string, other: string): boolean {
  const { setting } = change;
  if (setting !== "bypass") return isSameCell(setting, one, other);
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}

function turnsOf(changes: readonly PlantChange[]): readonly Turn[] {
  return changes.flatMap((change): readonly Turn[] => {
    const { date, old, new: now, putBack } = change;
    const made = { on: date, from: old, to: now, change, isBack: false };
    return putBack === undefined ? [made] : [made, { on: putBack, from: now, to: old, change, isBack: true }];
  });
}

/** The moments in the order in which they came: by day, and on one day so that each finds what it says, where that can be. */
function inOrder(changes: readonly PlantChange[], start: string | undefined): readonly Turn[] {
  const left = [...turnsOf(changes)].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  const ordered: Turn[] = [];
  const made = new Set<PlantChange>();
  let now = start;
  while (left.length > 0) {
    const day = (left[0] as Turn).on;
    const today = left.filter((one) => one.on === day && (!one.isBack || made.has(one.change)));
    const fits = today.find((one) => now !== undefined && isSame(one.change, one.from, now));
    // put back before it was made is refused where it is read, so that one can always be taken
    const next = fits ?? today[0] ?? (left[0] as Turn);
    left.splice(left.indexOf(next), 1);
    made.add(next.change);
    ordered.push(next);
    now = next.to;
  }
  return ordered;
}

/**
 * Follows the entries on one setting of one machine.
 *
 * @param start - what stood there before the first, where it is known
 */
export function changeChain(changes: readonly PlantChange[], start: string | undefined): ChangeChain {
  const turns = inOrder(changes, start);
  const breaks: ChainBreak[] = [];
  let now = start;
  for (const { on, from, to, change } of turns) {
    if (now !== undefined && !isSame(change, from, now)) breaks.push({ change, on, before: now, says: from });
    now = to;
  }
  const ends = turns.flatMap((turn, at): readonly ChangeEnd[] => {
    const { change, isBack } = turn;
    const mustEnd = change.until !== undefined || (change.setting === "bypass" && change.new !== "");
    if (isBack || !mustEnd) return [];
    const back = turns.slice(at + 1).find((one) => isSame(change, one.to, change.old));
    const next = turns[at + 1];
    return [{ change, ended: (back ?? next)?.on ?? null, isBack: back !== undefined }];
  });
  const last = turns.at(-1);
  return { breaks, ends, last: now ?? "", lastChange: last?.change };
}
