import { requireKnownKeys, requireList, requireText, shown, VeladisError } from "../core/index";
import type { RouteReading } from "./route-reading";

const rowKeys: Readonly<Record<keyof RouteReading, true>> = /* @__PURE__ */ Object.freeze({
  tag: true,
  line: true,
  reading: true,
  point: true,
  date: true,
  at: true,
  machine: true,
});

const FORM = "rows of a route, each { tag, line, reading }";

/** Refuses what is no row of a route, or has a key that none has. */
function requireRow(row: RouteReading, parameter: string, index: number): void {
  const place = { parameter, index };
  if (typeof row !== "object") {
    throw new VeladisError("wrong-type", { expected: FORM, received: shown(row), ...place });
  }
  requireKnownKeys(row, rowKeys, "a part of a row of a route", place);
  requireText(row.tag, "the tag of a machine", { ...place, option: "tag" });
  if (row.machine !== undefined && typeof row.machine !== "string") {
    requireText(row.machine, "what the row says of its machine, in words", { ...place, option: "machine" });
  }
  if (row.point === undefined || typeof row.point === "string") return;
  requireText(row.point, "the name of a point", { ...place, option: "point" });
}

/** Whether a row is one at the first look, which costs nothing for each of many. */
function isRow(row: RouteReading): boolean {
  if (typeof row !== "object" || typeof row.tag !== "string" || row.tag === "") return false;
  if (row.point !== undefined && typeof row.point !== "string") return false;
  if (row.machine !== undefined && typeof row.machine !== "string") return false;
  for (const key in row) if (!Object.hasOwn(rowKeys, key)) return false;
  return true;
}

/** The rows of a route, each an object without a key that no row has. */
export function checkedRows(rows: readonly RouteReading[], parameter: string): readonly RouteReading[] {
  for (const [index, row] of requireList(rows, FORM, { parameter }).entries()) {
    if (!isRow(row)) requireRow(row, parameter, index);
  }
  return rows;
}
