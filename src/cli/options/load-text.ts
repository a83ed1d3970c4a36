import type { Scheme, Verdict } from "../../severity/index";
import type { ReadAtState } from "../input/state-at-reading";
import { labelled } from "../print/labelled";

const NONE = /^(?:no|0(?:\.0+)?\s*(?:%|per ?cent|[kM]W))$/i;

/** Whether a scheme's limits are for a machine without load, as its scope says. */
function isForNoLoad({ scope }: Scheme): boolean {
  return /\bno[- ]load\b/i.test(scope);
}

/** What the load at the reading means for the limits it was judged by. */
function loadWords(load: string, schemes: readonly Scheme[]): string {
  const isNone = NONE.test(load);
  const idle = schemes.filter(isForNoLoad).map(({ standard, edition }) => `${standard} (${edition})`);
  const others = schemes.filter((one) => !isForNoLoad(one)).map(({ standard, edition }) => `${standard} (${edition})`);
  const told = isNone ? "none" : load;
  if (!isNone && idle.length > 0) {
    return `${told}, OUTSIDE what ${idle.join(" and ")} is for: a machine at no load, so that its limits do not hold`;
  }
  if (isNone && others.length > 0) {
    return `${told}, OUTSIDE what limits in service are for, unless ${others.join(" and ")} says otherwise: steady running under the usual load (ISO 20816-1, from memory)`;
  }
  return `${told}; limits are for steady running at the loads that the machine is meant for (ISO 20816-1, from memory)`;
}

/** The load that was noted beside a reading, in words; nothing where none was. */
export function loadNotes(
  { load }: Omit<ReadAtState, "reading">,
  verdicts: readonly Verdict[],
  schemeOf: (id: string) => Scheme,
): readonly string[] {
  if (load === undefined) return [];
  const ids = new Set(verdicts.flatMap(({ judgements }) => judgements.map(({ scheme }) => scheme)));
  return [loadWords(load, [...ids].map(schemeOf))];
}

/** The same as a line of a page. */
export function loadText(notes: readonly string[]): string {
  return labelled("load", notes, 12);
}

/** A line among many with the same behind it. */
export function loadLine(line: string, notes: readonly string[]): string {
  return notes.length === 0 ? line : `${line.trimEnd()}; load ${notes.join("; ")}\n`;
}

/** What was noted beside a reading, for data. */
export function stateData({ speed, load }: Omit<ReadAtState, "reading">, notes: readonly string[]): object {
  return { ...(speed !== undefined && { speed }), ...(load !== undefined && { load, loadNotes: notes }) };
}
