import type { PlantMachine } from "../../plant/index";
import { format } from "../../reading/index";
import {
  type CriterionLimits,
  conditionText,
  editionText,
  type Limit,
  limitsFor,
  type Scheme,
  type SchemeRef,
  schemeById,
  schemeOf,
  schemesFor,
} from "../../severity/index";
import type { ReportLimits } from "./machine-report";

const ASSUME = "lowest limits";

/** The limits of a table for a machine, criterion by criterion. */
function limitsBy(scheme: Scheme, criteria: readonly CriterionLimits[]): ReportLimits {
  const { id, measuredOn } = scheme;
  const [first] = criteria;
  const which = first === undefined ? "" : conditionText(first.machineClass);
  const rows = criteria.flatMap((one) => Object.values(one.limits) as Limit[]);
  return {
    title: `${editionText(scheme)}${which && `, ${which}`} (${id}), measured on ${measuredOn}`,
    limits: rows.map((limit) => ({ name: limit.name, level: format(limit), source: limit.source })),
    notes: [
      ...new Set(criteria.flatMap((one) => one.assumedFacts.map((text) => `Assumed: ${text}.`))),
      ...new Set(criteria.flatMap((one) => one.setAside.map((text) => `Set aside: ${text}.`))),
    ],
  };
}

/** The table by its id: the confirmed form of it where there is one. */
function tableOf(id: string, schemes: readonly SchemeRef[] | undefined): Scheme {
  return schemes?.map((one) => schemeOf(one)).find((one) => one.id === id) ?? schemeById(id);
}

/**
 * The limits by which a machine is judged, without a reading: of the table that its row names, those that the row states, or
 * of all tables that its nameplate admits.
 *
 * @param schemes - the schemes to choose from; the built-in ones if not given
 * @throws {@link VeladisError} as {@link limitsFor} and {@link schemesFor}
 */
export function machineLimits(one: PlantMachine, schemes?: readonly SchemeRef[]): ReportLimits[] {
  const { machine, table, limits, ceiling } = one;
  const stated: ReportLimits[] = [];
  if (limits !== undefined) {
    const { source, ...levels } = limits;
    const written = (level: (typeof levels)["B/C"]): string => (typeof level === "string" ? level : format(level));
    const known = { title: source, provenance: "reported", note: "as stated on the list of the plant" } as const;
    stated.push({
      title: "Limits of the maker or the site, in place of a table",
      limits: Object.entries(levels).map(([name, level]) => ({ name, level: written(level), source: known })),
      notes: [],
    });
  }
  if (ceiling !== undefined) {
    const source = { title: "the list of the plant", provenance: "reported", note: "as stated there" } as const;
    stated.push({
      title: "Ceiling of the maker or the site",
      limits: [{ name: "highest trip", level: format(ceiling), source }],
      notes: [],
    });
  }
  if (limits !== undefined) return stated;
  if (table !== undefined) {
    const scheme = tableOf(table, schemes);
    return [limitsBy(scheme, limitsFor({ scheme, machine, assume: ASSUME })), ...stated];
  }
  const admitted = schemesFor(machine, { ...(schemes && { schemes }) });
  return [
    ...admitted.map((found) => {
      const by = limitsBy(found.scheme, found.limits());
      return { ...by, notes: [...new Set([...found.assumedFacts.map((text) => `Assumed: ${text}.`), ...by.notes])] };
    }),
    ...stated,
  ];
}
