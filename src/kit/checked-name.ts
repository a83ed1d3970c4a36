import {
  type ErrorPlace,
  provenanceShape,
  requireGiven,
  requireShape,
  requireText,
  type Source,
  shown,
  VeladisError,
} from "../core/index";
import { findDetector } from "../detectors/index";
import { findFrequencyUnit } from "../frequency/index";
import { findUnit } from "../units/index";

/** Words that mean something in a reading. */
const taken = ["db", "re", "ref", "at", "to", "with", "crest", "factor", "true", "k"];

/**
 * A spelling that no built-in unit or detector has, so that what was read before is read as it was.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`, `out-of-range` for one that is taken
 */
export function requireFreeName(name: string, what: string, place: ErrorPlace): string {
  if (typeof name !== "string") {
    throw new VeladisError("wrong-type", {
      ...{ expected: what, received: shown(name) },
      ...place,
    });
  }
  const form = `${what}: letters, digits, slashes and dots, a letter first, 24 characters at most`;
  if (!/^[a-zA-Z\u00b5-\uffdc][\w/.²³-]{0,23}$/.test(name) || name.includes("_")) {
    throw new VeladisError("syntax", { expected: form, received: shown(name), ...place });
  }
  const isTaken =
    findUnit(name) ??
    // in2 and in² are areas of a built-in unit
    findUnit(name.replace(/[²³23]$/, "")) ??
    findDetector(name) ??
    findFrequencyUnit(name) ??
    (taken.includes(name.toLowerCase()) || name in {});
  if (!isTaken) return name;
  throw new VeladisError("out-of-range", {
    expected: `${what} of its own: this one is taken, or means something already`,
    received: shown(name),
    ...place,
  });
}

/**
 * Refuses a number that is no whole number above zero.
 *
 * @throws {@link VeladisError} `wrong-type`, `out-of-range`
 */
export function requireWhole(value: number, what: string, place: ErrorPlace): number {
  if (Number.isSafeInteger(value) && value > 0) return value;
  throw new VeladisError(typeof value === "number" ? "out-of-range" : "wrong-type", {
    expected: `${what}: a whole number above zero, as a ratio is exact`,
    received: shown(value),
    ...place,
  });
}

/** Refuses what has no name and no source. */
export function requireNameAndSource(one: { readonly name: string; readonly source: Source }, where: string): void {
  requireText(
    requireGiven(one.name, `${where}.name: a text`, { parameter: where, option: "name" }),
    `${where}.name: a text`,
    {
      parameter: where,
      option: "name",
    },
  );
  requireShape(one, { name: "text", source: { title: "text", provenance: provenanceShape } }, where);
}
