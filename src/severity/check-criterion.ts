import {
  dataText,
  inPlace,
  provenances,
  requireChoice,
  requireNonNegative,
  requirePositive,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { requireCondition } from "./check-condition";
import { requireDay } from "./confirm-date";
import { requireName, requireOther } from "./confirm-names";
import { criterionType } from "./criterion-type";
import { requireKeys, requireObject } from "./require-parts";
import type { Criterion, SpeedLaw } from "./scheme";

const signatureKeys = ["by", "on", "second", "shipped"] as const;
const sourceKeys = [
  "title",
  "where",
  "provenance",
  "page",
  "note",
  "disputed",
  "by",
  "on",
  "second",
  "shipped",
] as const;
const criterionKeys = ["as", "limits", "source", "limitSources", "ceilings", "band", "height", "when"] as const;

/** Refuses a source that does not say what was read and how. */
function requireSource(given: unknown, where: string): void {
  const source = requireObject(given, `${where}: a source with title and provenance`);
  requireKeys(source, sourceKeys, `the source in ${where}`);
  for (const [name, value] of Object.entries(source))
    requireText(value as string, `${where}: the ${name} of the source, as text`, { option: name });
  requireText(source.title as string, `${where}: the title of the source, as text`, { option: "title" });
  requireChoice(source.provenance, Object.keys(provenances), `${where}: how the source is known`, {
    option: "provenance",
  });
  if (source.provenance === "printed" && source.page === undefined) {
    throw new VeladisError("missing-fact", {
      expected: `${where}: the page of the publication on which it was read, as in page "p. 3"; without one it is known in another way, such as memory`,
      received: "nothing",
      option: "page",
    });
  }
  if (source.provenance !== "confirmed") {
    const signed = signatureKeys.find((name) => source[name] !== undefined);
    if (signed === undefined) return;
    throw new VeladisError("unknown-option", {
      expected: `${where}: ${signed} only in a source that is confirmed`,
      received: shown(source.provenance),
      option: "provenance",
    });
  }
  if (source.disputed !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: `${where}: disputed only in a source that is not confirmed`,
      received: "confirmed",
      option: "disputed",
    });
  }
  for (const name of ["by", "page"] as const) {
    if (source[name] !== undefined) continue;
    throw new VeladisError("missing-fact", {
      expected: `${where}: ${name === "by" ? "by, the name of who confirmed it" : "the page on which it was confirmed"}`,
      received: "nothing",
      option: name,
    });
  }
  const by = requireName(source.by, `${where}: by, the name of who confirmed it`);
  if (source.second !== undefined) requireOther(source.second, by, `${where}: second, the name of`);
  requireDay(source.on, `${where}: on, when it was confirmed`);
}

/** Refuses a measuring band that is none. */
export function requireCriterionBand(given: unknown, where: string): void {
  const what = `${where}: a band [low, high] above zero and rising, in Hz`;
  if (Array.isArray(given) && given.length === 2) {
    const [low, high] = given;
    if (requirePositive(low, what) < requirePositive(high, what)) return;
  }
  throw new VeladisError("out-of-range", { expected: what, received: dataText(given), option: "band" });
}

/** A limit as numbers to compare: what it grows with, and where it stops. */
function comparable(limit: unknown, where: string): [number, number] {
  if (typeof limit === "number")
    return [requirePositive(limit, `${where}: a limit above zero`), Number.POSITIVE_INFINITY];
  const law = requireObject(
    limit,
    `${where}: a number, null, or a law of speed such as { rootOf: 12000, atMost: 1 }`,
  ) as unknown as SpeedLaw;
  requireKeys(law, ["rootOf", "atMost"], `the law of speed in ${where}`);
  const most =
    law.atMost === undefined
      ? Number.POSITIVE_INFINITY
      : requirePositive(law.atMost, `${where}: atMost above zero`, { option: "atMost" });
  return [requirePositive(law.rootOf, `${where}: rootOf above zero`, { option: "rootOf" }), most];
}

function requireAscending(limits: Record<string, unknown>, names: readonly string[], where: string): void {
  const present = names.filter((name) => (limits[name] ?? null) !== null);
  if (present.length === 0)
    throw new VeladisError("missing-fact", {
      expected: `${where}: one limit or more`,
      received: "nothing",
      option: "limits",
      allowed: names,
    });
  present.reduce<[number, number] | undefined>((before, name) => {
    const limit = limits[name];
    const size = inPlace({ option: name }, () => comparable(limit, `${name} in ${where}`));
    const mixed = typeof limit !== typeof limits[present[0] as string];
    if (before === undefined || (!mixed && size[0] > before[0] && size[1] >= before[1])) return size;
    throw new VeladisError("out-of-range", {
      expected: `${where}: ascending limits, all numbers or all laws of speed`,
      received: `${dataText(limit)} for ${name}, not above the limit before it`,
      option: name,
    });
  }, undefined);
}

/**
 * Refuses what is no criterion with limits of these names.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option`, `out-of-range`, `unknown-unit`, `unknown-detector`,
 *   `missing-detector`, `missing-fact`
 */
export function requireCriterionParts(given: unknown, names: readonly string[], where: string): void {
  const criterion = requireObject(given, `${where}: a criterion with as, limits and source`);
  requireKeys(criterion, criterionKeys, where);
  const as = requireText(criterion.as as string, `${where}: a reading type such as "mm/s rms"`, { option: "as" });
  const { type, reference } = inPlace({ option: "as" }, () => criterionType(criterion as unknown as Criterion));
  if (type !== as || reference !== 0) {
    throw new VeladisError("syntax", {
      expected: `${where}: a linear reading type in its plain spelling`,
      received: shown(as),
      option: "as",
      ...(reference === 0 && { didYouMean: [type] }),
    });
  }
  const limits = requireObject(criterion.limits, `${where}: limits by name`, { option: "limits" });
  requireKeys(limits, names, `the limits of ${where}`);
  requireAscending(limits, names, where);
  if (criterion.source === undefined) {
    throw new VeladisError("missing-fact", {
      expected: `${where}: the source of the limits`,
      received: "nothing",
      option: "source",
    });
  }
  inPlace({ option: "source" }, () => requireSource(criterion.source, where));
  const sources = requireObject(criterion.limitSources ?? {}, `${where}: sources by name of the limit`, {
    option: "limitSources",
  });
  requireKeys(sources, names, `the sources of limits of ${where}`);
  for (const [name, source] of Object.entries(sources))
    inPlace({ option: name }, () => requireSource(source, `${name} in ${where}`));
  if (criterion.ceilings !== undefined) {
    const ceilings = requireObject(criterion.ceilings, `${where}: ceilings for alarm and trip`, { option: "ceilings" });
    requireKeys(ceilings, ["alarm", "trip", "source"], `the ceilings of ${where}`);
    requirePositive(ceilings.alarm as number, `${where}: a ceiling above zero`, { option: "alarm" });
    requirePositive(ceilings.trip as number, `${where}: a ceiling above zero`, { option: "trip" });
    inPlace({ option: "source" }, () => requireSource(ceilings.source, where));
  }
  if (criterion.band !== undefined) requireCriterionBand(criterion.band, where);
  if (criterion.height !== undefined) {
    const height = requireObject(criterion.height, `${where}: height with above and perMetre`, { option: "height" });
    requireKeys(height, ["above", "perMetre"], `the height of ${where}`);
    requireNonNegative(height.above as number, `${where}: a height of zero or more, in m`, { option: "above" });
    requirePositive(height.perMetre as number, `${where}: what a metre adds, above zero`, { option: "perMetre" });
  }
  if (criterion.when !== undefined) {
    inPlace({ option: "when" }, () => requireCondition(criterion.when, where));
    requireKeys(criterion.when as object, ["speed"], `when a criterion applies, in ${where}`);
  }
}
