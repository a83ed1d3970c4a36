import { section, table } from "./list-parts";
import type { MachineReport } from "./machine-report";
import { type Markup, markup } from "./markup";

const titles = ["date", "what", "reason", "by", "open"];

/** The record of changes of this machine, the last first. */
export function changesSection({ changes }: MachineReport): Markup | undefined {
  if (changes.length === 0) return undefined;
  const rows = changes.map(({ date, what, reason, by, open }) => [
    date,
    what,
    reason,
    by,
    open === "" ? "" : markup`<strong>${open}</strong>`,
  ]);
  return section("changes", "Record of changes", table("Changes and bypasses, the last first", titles, rows, ["date"]));
}
