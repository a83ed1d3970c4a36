import { shown, text, VeladisError } from "../core/index";
import { checkCondition, checkedList, checkedObject, checkKeys } from "./check-condition";
import { checkBand, checkCriterion } from "./check-criterion";
import { asChecked } from "./checked";
import { deepFreeze } from "./deep-freeze";
import { facts } from "./facts";
import { type LimitName, limitNames, type SchemeKind } from "./kinds";
import { conditionText } from "./machine-class";
import { machineTypes } from "./machine-types";
import { classesMeet } from "./overlap";
import type { MachineClass, Scheme } from "./scheme";

/** What {@link defineScheme} takes: a scheme, of which all but id, kind, standard and classes may be left out. */
export type SchemeInput<K extends SchemeKind = SchemeKind, Id extends string = string> = Pick<
  Scheme<K, Id>,
  "id" | "kind" | "standard" | "classes"
> &
  Partial<Scheme<K, Id>>;

const kinds = [...Object.keys(limitNames), "grades"] as SchemeKind[];
const texts = ["id", "standard", "edition", "title", "statusNote", "scope", "measuredOn"] as const;
const others = [
  "kind", "status", "replacedBy", "machines", "within", "exclusions", "place", "band", "slowBand", "defaults", "ask", "meanings",
  "grades", "orientation", "notes", "classes",
] as const; // biome-ignore format: names
const classKeys = ["named", "by", "when", "within", "criteria", "note"] as const;

function oneOf(given: unknown, allowed: readonly string[], what: string): void {
  if (typeof given === "string" && allowed.includes(given)) return;
  throw new VeladisError(typeof given === "string" ? "unknown-option" : "wrong-type", {
    expected: what,
    received: shown(given),
    allowed,
  });
}

/** The names of the limits of the scheme, lowest first. */
function checkedNames(scheme: Record<string, unknown>): readonly string[] {
  const kind = scheme.kind as SchemeKind;
  if (kind !== "grades") {
    if (scheme.grades === undefined) return limitNames[kind];
    throw new VeladisError("unknown-option", { expected: "grades for kind grades only", received: shown(kind) });
  }
  const grades = checkedList(scheme.grades, "grades: the names of two grades or more, best first").map((grade) =>
    text(grade as string, "the name of a grade"),
  );
  // an object sorts names such as "11" before all others, whatever the order they were given in
  const plain = grades.every((grade) => !/^\d+$/.test(grade));
  if (plain && grades.length > 1 && new Set(grades).size === grades.length) return grades.slice(0, -1);
  throw new VeladisError("out-of-range", {
    expected: "two grades or more, each with a name of its own that is no whole number",
    received: shown(grades.join(", ")),
  });
}

function checkClass(given: unknown, names: readonly string[], where: string): void {
  const one = checkedObject(given, `${where}: a class with criteria`);
  checkKeys(one, classKeys, where);
  for (const part of ["named", "by", "when", "within"] as const)
    if (one[part] !== undefined) checkCondition(one[part], `${part} of ${where}`);
  if (one.note !== undefined) text(one.note as string, `${where}: a note, as text`);
  const criteria = checkedList(one.criteria, `${where}: one criterion or more`);
  criteria.forEach((criterion, i) => {
    checkCriterion(criterion, names, `criterion ${i + 1} of ${where}`);
  });
  const present = criteria.map((criterion) => {
    const { limits } = criterion as { limits: Record<string, unknown> };
    return names.filter((name) => limits[name] !== undefined && limits[name] !== null).join(", ");
  });
  if (new Set(present).size === 1) return;
  throw new VeladisError("out-of-range", {
    expected: `${where}: criteria with limits of the same names`,
    received: present.join("; "),
  });
}

function checkDisjoint(classes: readonly MachineClass[]): void {
  classes.forEach((one, i) => {
    const other = classes.findIndex((later, j) => j > i && classesMeet(one, later));
    if (other < 0) return;
    const both = [one, classes[other] as MachineClass].map(({ named, by, when }) =>
      conditionText({ ...named, ...by, ...when }),
    );
    throw new VeladisError("out-of-range", {
      expected: "classes that no machine can belong to two of",
      received: `class ${i + 1} (${both[0] || "any machine"}) and class ${other + 1} (${both[1] || "any machine"})`,
    });
  });
}

function checkRest(scheme: Record<string, unknown>): void {
  for (const name of texts) text(scheme[name] as string, `the ${name} of a scheme, as text`);
  oneOf(scheme.status, ["current", "withdrawn", "guide"], "the status of a scheme");
  oneOf(scheme.place, ["housing", "shaft"], "the measuring place of a scheme");
  if (scheme.status === "withdrawn") text(scheme.replacedBy as string, "what replaced a withdrawn edition, as text");
  if (scheme.band !== null) checkBand(scheme.band, "the scheme");
  if (scheme.within !== undefined) checkCondition(scheme.within, "within");
  if (scheme.slowBand !== undefined) checkBand((scheme.slowBand as { band?: unknown }).band, "slowBand");
  for (const type of scheme.machines === undefined ? [] : checkedList(scheme.machines, "machines: one kind or more"))
    oneOf(type, Object.keys(machineTypes), "a kind of machine");
  for (const fact of (scheme.ask ?? []) as unknown[]) oneOf(fact, Object.keys(facts), "a fact");
  for (const note of (scheme.notes ?? []) as unknown[]) text(note as string, "a note, as text");
  for (const exclusion of (scheme.exclusions ?? []) as { when: unknown; reason: unknown }[]) {
    checkCondition(exclusion.when, "an exclusion");
    text(exclusion.reason as string, "the reason of an exclusion, as text");
  }
  const meanings = checkedObject(scheme.meanings ?? {}, "meanings by fact");
  checkKeys(meanings, Object.keys(facts), "meanings");
  for (const meaning of Object.values(meanings)) text(meaning as string, "what the labels of a fact mean, as text");
  checkKeys(checkedObject(scheme.defaults ?? {}, "defaults by fact"), Object.keys(facts), "defaults");
  for (const one of Object.values((scheme.defaults ?? {}) as Record<string, { is: unknown; because: unknown }>)) {
    text(one?.is as string, "a default, as text");
    text(one?.because as string, "the reason of a default, as text");
  }
}

/** The scheme with what was left out filled in, behind what was given. */
function completed(given: Record<string, unknown>): Record<string, unknown> {
  const rest = {
    edition: "not stated",
    title: given.standard,
    status: "current",
    statusNote: "not stated",
    scope: "not stated",
    place: "housing",
    measuredOn: "not stated",
    band: null,
  };
  const left = Object.entries(rest).filter(([name]) => given[name] === undefined);
  return { ...given, ...Object.fromEntries(left) };
}

/**
 * A scheme of your own: a site rule, a maker's limits, a table this library does not hold. It works everywhere a
 * built-in one does. It is plain data: `JSON.stringify` writes it, `defineScheme(JSON.parse(text))` reads it.
 *
 * @param input - the scheme; all but `id`, `kind`, `standard` and `classes` may be left out
 * @returns the scheme, complete and frozen; a copy, so that later changes of the input do not reach it
 * @throws {@link VeladisError} `wrong-type`, `syntax`, `unknown-option` for names there are none of, `unknown-unit`,
 *   `unknown-detector`, `missing-detector`, `not-positive`, `missing-fact` for limits without a source,
 *   `out-of-range` for limits that do not ascend and classes that overlap
 * @example
 * ```ts
 * import { classify, defineScheme } from "veladis/severity";
 *
 * const siteRule = defineScheme({
 *   id: "heating-works-fans",
 *   kind: "zones",
 *   standard: "Site rule 12, invented",
 *   classes: [
 *     {
 *       when: { support: "flexible" },
 *       criteria: [
 *         {
 *           as: "in/s pk",
 *           limits: { "A/B": 0.1, "B/C": 0.2, "C/D": 0.4 },
 *           source: { title: "Site rule 12", where: "page 3", provenance: "published" },
 *         },
 *       ],
 *     },
 *   ],
 * });
 * classify("5 mm/s rms", { scheme: siteRule, machine: "flexible" }).zone; // => "C"
 * JSON.stringify(defineScheme(JSON.parse(JSON.stringify(siteRule)))) === JSON.stringify(siteRule); // => true
 * defineScheme({ ...siteRule, classes: [] }); // throws wrong-type
 * ```
 */
export function defineScheme<const Id extends string, K extends SchemeKind>(input: SchemeInput<K, Id>): Scheme<K, Id> {
  const given = checkedObject(input, "a scheme with id, kind, standard and classes");
  checkKeys(given, [...texts, ...others], "a scheme");
  oneOf(given.kind, kinds, "the kind of a scheme");
  const scheme = completed(given);
  checkRest(scheme);
  const names: readonly LimitName[] = checkedNames(given);
  checkedList(given.classes, "classes: one or more").forEach((one, i) => {
    checkClass(one, names, `class ${i + 1}`);
  });
  const copy = JSON.parse(JSON.stringify(scheme)) as Scheme<K, Id>;
  checkDisjoint(copy.classes);
  return deepFreeze(asChecked(copy));
}
