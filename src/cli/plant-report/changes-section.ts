import type { PlantChange } from "../../plant/index";
import { section, table } from "./list-parts";
import type { MachineReport } from "./machine-report";
import type { Markup } from "./markup";

const titles = ["date", "what", "reason", "by", "until, put back"];

function whatText({ setting, old, new: now }: PlantChange): string {
  if (setting === "bypass") return now.trim() === "" ? `not bypassed any more: ${old}` : `bypassed: ${now}`;
  return `${setting} from ${old.trim() || "nothing"} to ${now.trim() || "nothing"}`;
}

/** The record of changes of this machine, the last first. */
export function changesSection({ changes }: MachineReport): Markup | undefined {
  if (changes.length === 0) return undefined;
  const rows = [...changes]
    .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : b.line - a.line))
    .map((one) => [
      one.date,
      whatText(one),
      one.reason,
      `${one.who}${one.approvedBy === undefined ? ", approved by nobody" : `, approved by ${one.approvedBy}`}`,
      [one.until && `until ${one.until}`, one.putBack && `put back ${one.putBack}`].filter(Boolean).join(", "),
    ]);
  return section("changes", "Record of changes", table("Changes and bypasses, the last first", titles, rows, ["date"]));
}
