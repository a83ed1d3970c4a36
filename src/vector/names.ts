import { requireText, shown, VeladisError } from "../core/index";

/**
 * The name of a probe or a direction: a text without commas and control characters, since a comma ends it where a vector is
 * written.
 */
export function checkedName(name: string, kind: "probe" | "direction"): string {
  const what = `the name of a ${kind} without commas`;
  const plain = requireText(name, what, { option: kind }).trim().replace(/\s+/g, " ");
  if (/[\p{C},]/u.test(name) || plain.length > 60) {
    throw new VeladisError("syntax", { expected: what, received: shown(name), option: kind });
  }
  return plain;
}

/** Whether two names are one, without regard to case. */
function isOne(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}

/** The name that both say, if it is one. */
export function commonName(a: string | undefined, b: string | undefined): string | undefined {
  return a !== undefined && b !== undefined && isOne(a, b) ? a : undefined;
}

/** As {@link oneName}, where neither has to be named: nothing is assumed of two that say nothing. */
export function agreedName(a: string | undefined, b: string | undefined, kind: "probe" | "direction"): string[] {
  return a === undefined && b === undefined ? [] : oneName(a, b, kind);
}

/** Refuses two names that differ, and gives back what is assumed where one is missing: nothing where both are named. */
export function oneName(a: string | undefined, b: string | undefined, kind: "probe" | "direction"): string[] {
  if (a === undefined || b === undefined) {
    return [`one ${kind} for both: ${a === undefined && b === undefined ? "neither names it" : "only one names it"}`];
  }
  if (isOne(a, b)) return [];
  throw new VeladisError("out-of-range", {
    expected: `two vectors of one ${kind}`,
    received: `${shown(a)} and ${shown(b)}`,
  });
}
