import { counted } from "../../core/index";
import type { DueCheck } from "../../plant/index";
import { wrapped } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

/** The check that is due next of those that are not yet. */
function nextOf(checks: readonly DueCheck[]): string {
  const next = checks.filter(({ state }) => state === "not due").sort((a, b) => (b.days ?? 0) - (a.days ?? 0))[0];
  return next === undefined ? "" : `; next ${next.tag} on ${next.due}`;
}

/** Which devices are to be checked on a day; those that are not due are counted. */
export function dueText(checks: readonly DueCheck[], on: string): string {
  const due = checks.filter(({ isDue }) => isDue);
  const open = checks.filter(({ state }) => state === "no interval");
  const counts = [
    `${due.length} of ${counted(checks.length, "device")} to be checked`,
    ...(open.length > 0 ? [`${open.length} without an interval`] : []),
    `${checks.length - due.length - open.length} not due${nextOf(checks)}`,
  ];
  const rows = [...due, ...open].map(({ tag, state, due: day, days, why }) => [
    [tag],
    [state],
    [day ?? ""],
    [days === null || days < 0 ? "" : `${days}`],
    [why],
  ]);
  const head = wrapped(`checks on ${on}: ${counts.join(", ")}`);
  if (rows.length === 0) return head;
  return `${head}\n${wrappedTable(
    [
      { title: "tag" },
      { title: "check", wraps: true },
      { title: "due" },
      { title: "days over", align: "right" },
      { title: "why", wraps: true },
    ],
    rows,
  )}`;
}
