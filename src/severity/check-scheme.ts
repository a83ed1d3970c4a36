import { inPlace, requireChoice, requirePositive, requireText, shown, VeladisError } from "../core/index";
import { requireCondition } from "./check-condition";
import { requireCriterionBand, requireCriterionParts } from "./check-criterion";
import { type Fact, facts, isNumberFact } from "./facts";
import { limitNames, type SchemeKind, schemeKinds } from "./kinds";
import { conditionText } from "./machine-class";
import { machineTypes } from "./machine-types";
import { classesMeet } from "./overlap";
import { requireKeys, requireList, requireObject } from "./require-parts";
import type { MachineClass } from "./scheme";

const textFacts: readonly Fact[] = /* @__PURE__ */ (() =>
  (Object.keys(facts) as Fact[]).filter((fact) => !isNumberFact(fact) && fact !== "type"))();
const texts = ["id", "standard", "edition", "title", "statusNote", "scope", "measuredOn"] as const;
// biome-ignore format: names
const others = [
  "kind", "status", "replacedBy", "machines", "within", "exclusions", "place", "band", "peakMeans", "slowBand", "ask", "meanings",
  "grades", "informative", "byContract", "notes", "classes",
] as const;
const classKeys = ["named", "by", "when", "within", "criteria", "note"] as const;

/** The names of the limits of the scheme, lowest first. */
export function checkedNames(scheme: Record<string, unknown>): readonly string[] {
  const kind = scheme.kind as SchemeKind;
  if (kind !== "grades") {
    if (scheme.grades === undefined) return limitNames[kind];
    throw new VeladisError("unknown-option", {
      expected: 'grades only in a scheme of kind "grades"',
      received: shown(kind),
    });
  }
  const grades = requireList(scheme.grades, "grades: a list of two names or more, best first", {
    option: "grades",
  }).map((grade) => requireText(grade as string, "the name of a grade", { option: "grades" }));
  // an object sorts names such as "11" before all others, whatever the order they were given in
  const plain = grades.every((grade) => !/^\d+$/.test(grade));
  if (plain && grades.length > 1 && new Set(grades).size === grades.length) return grades.slice(0, -1);
  throw new VeladisError("out-of-range", {
    expected: "grades: two names or more, all different and no whole numbers",
    received: shown(grades.join(", ")),
    option: "grades",
  });
}

export function requireClassParts(given: unknown, names: readonly string[], where: string): void {
  const one = requireObject(given, `${where}: a class with criteria`);
  requireKeys(one, classKeys, where);
  for (const part of ["named", "by", "when", "within"] as const)
    if (one[part] !== undefined) inPlace({ option: part }, () => requireCondition(one[part], `${part} of ${where}`));
  if (one.note !== undefined) requireText(one.note as string, `${where}: a note, as text`, { option: "note" });
  const criteria = requireList(one.criteria, `${where}: a list of one criterion or more`, { option: "criteria" });
  criteria.forEach((criterion, i) => {
    inPlace({ option: "criteria", index: i }, () =>
      requireCriterionParts(criterion, names, `criterion ${i + 1} of ${where}`),
    );
  });
  const present = criteria.map((criterion) => {
    const { limits } = criterion as { limits: Record<string, unknown> };
    return names.filter((name) => (limits[name] ?? null) !== null).join(", ");
  });
  if (new Set(present).size === 1) return;
  throw new VeladisError("out-of-range", {
    expected: `${where}: criteria with limits of the same names`,
    received: present.join("; "),
    option: "criteria",
  });
}

export function requireDisjoint(classes: readonly MachineClass[]): void {
  const told = (i: number): string => {
    const { named, by, when } = classes[i] as MachineClass;
    return `class ${i + 1} (${conditionText({ ...named, ...by, ...when }) || "any machine"})`;
  };
  classes.forEach((one, i) => {
    classes.forEach((later, j) => {
      if (j <= i || !classesMeet(one, later)) return;
      throw new VeladisError("out-of-range", {
        expected: "classes that no machine can belong to two of",
        received: `${told(i)} and ${told(j)}`,
        option: "classes",
        index: j,
      });
    });
  });
}

/** A list that may be left out. */
function listIn(scheme: Record<string, unknown>, name: string): readonly unknown[] {
  return scheme[name] === undefined
    ? []
    : requireList(scheme[name], `${name}: a list of one or more`, { option: name });
}

/** An object by fact that may be left out. */
function byFact(scheme: Record<string, unknown>, name: string): unknown[] {
  const given = requireObject(scheme[name] ?? {}, `${name} by fact`, { option: name });
  requireKeys(given, textFacts, name);
  return Object.values(given);
}

function requireScope(scheme: Record<string, unknown>): void {
  if (scheme.within !== undefined) inPlace({ option: "within" }, () => requireCondition(scheme.within, "within"));
  for (const type of listIn(scheme, "machines"))
    requireChoice(type, Object.keys(machineTypes), "a kind of machine", { option: "machines" });
  for (const given of listIn(scheme, "exclusions")) {
    const exclusion = requireObject(given, "an exclusion with when and reason", { option: "exclusions" });
    requireKeys(exclusion, ["when", "reason"], "an exclusion");
    requireCondition(exclusion.when, "an exclusion");
    requireText(exclusion.reason as string, "the reason of an exclusion, as text", { option: "reason" });
  }
  for (const fact of listIn(scheme, "ask")) requireChoice(fact, Object.keys(facts), "a fact", { option: "ask" });
  for (const meaning of byFact(scheme, "meanings"))
    requireText(meaning as string, "what the labels of a fact mean, as text", { option: "meanings" });
}

/** Refuses what a scheme says of itself and its scope when it is no such thing; classes are checked apart. */
export function requireSchemeParts(scheme: Record<string, unknown>): void {
  requireKeys(scheme, [...texts, ...others], "a scheme");
  requireChoice(scheme.kind, schemeKinds, "the kind of a scheme", { option: "kind" });
  for (const name of texts) requireText(scheme[name] as string, `the ${name} of a scheme, as text`, { option: name });
  requireChoice(scheme.status, ["current", "withdrawn", "guide"], "the status of a scheme", { option: "status" });
  requireChoice(scheme.place, ["housing", "shaft"], "the measuring place of a scheme", { option: "place" });
  if (scheme.status === "withdrawn" || scheme.replacedBy !== undefined)
    requireText(scheme.replacedBy as string, "what replaced a withdrawn edition, as text", { option: "replacedBy" });
  if (scheme.band !== null) requireCriterionBand(scheme.band, "the scheme");
  if (scheme.peakMeans !== undefined)
    requireChoice(scheme.peakMeans, ["true", "rms", "open"], "which peak is meant", { option: "peakMeans" });
  if (scheme.slowBand !== undefined) {
    const slow = requireObject(scheme.slowBand, "slowBand with below and band");
    requireKeys(slow, ["below", "band"], "slowBand");
    requirePositive(slow.below as number, "slowBand: a speed above zero, in r/min", { option: "below" });
    requireCriterionBand(slow.band, "slowBand");
  }
  for (const mark of ["informative", "byContract"] as const) {
    if (scheme[mark] === undefined || scheme[mark] === true) continue;
    throw new VeladisError("wrong-type", { expected: `${mark}: true or nothing`, received: shown(scheme[mark]) });
  }
  for (const note of listIn(scheme, "notes")) requireText(note as string, "a note, as text");
  requireScope(scheme);
}
