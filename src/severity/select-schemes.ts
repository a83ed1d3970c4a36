import { inPlace, isVerified, type Provenance, requireList, withParameters, worstProvenance } from "../core/index";
import { applies } from "./applicable-criteria";
import { facts as factTable } from "./facts";
import type { SchemeKind } from "./kinds";
import { namesOf } from "./limit";
import { lowestLimits, lowestLimitsAssumed } from "./lowest-limits";
import type { KnownFacts } from "./machine";
import { conditionOf, conditionText } from "./machine-class";
import { type MachineRef, machineFacts } from "./machine-facts";
import { machineTypes } from "./machine-types";
import { type MachineMatch, type MissingFact, matchMachine } from "./match-machine";
import { withNominalPower } from "./nominal-power";
import type { Condition, MachineClass, Scheme } from "./scheme";
import { schemesOf } from "./scheme-of";
import { inOrder } from "./scheme-order";
import { builtInSchemes } from "./schemes/index";

/** A scheme that is for the machine, best first. */
export interface Candidate {
  readonly scheme: string;
  readonly standard: string;
  readonly edition: string;
  readonly kind: SchemeKind;
  /** `applies`: all is known. `assumes`: the lowest limits are taken for facts not given. `asks`: facts are missing. */
  readonly status: "applies" | "assumes" | "asks";
  /** Why it applies, in words. */
  readonly reason: string;
  /** Facts not given, with the question to the owner. */
  readonly missing: readonly MissingFact[];
  /** What was taken for facts not given, in words. */
  readonly assumedFacts: readonly string[];
  /** The class decided for or assumed; left out while facts are missing. */
  readonly machineClass?: Condition;
  /** How the least known limit of the class, or of the table while it is open, is known. */
  readonly provenance: Provenance;
  readonly verified: boolean;
  readonly withdrawn: boolean;
  readonly replacedBy?: string;
  /** True where an order has to name it: `judge` never takes it by itself. */
  readonly byContract?: true;
}

/** A scheme that is not for the machine, with the reason. */
export interface Excluded {
  readonly scheme: string;
  readonly standard: string;
  readonly edition: string;
  readonly reason: string;
}

/** What {@link selectSchemes} found. */
export interface Selection {
  /** Best first: the kind asked for, editions in force, tables for just this machine, complete facts. */
  readonly candidates: readonly Candidate[];
  /** Schemes that are for other machines, other sizes or speeds, another place or another purpose. */
  readonly excluded: readonly Excluded[];
  /** Every fact that any candidate misses, most often missed first. */
  readonly missing: readonly MissingFact[];
}

const always = ["type", "place", "condition"] as const;

function ask(fact: (typeof always)[number], allowed: readonly string[]): MissingFact {
  return { fact, ask: factTable[fact].ask, allowed };
}

/** Facts that no class asks for and yet decide whether the scheme is the right one. */
function missingOfScope({ machines, place, kind }: Scheme, known: KnownFacts): MissingFact[] {
  return [
    ...(machines !== undefined && known.type === undefined ? [ask("type", Object.keys(machineTypes))] : []),
    ...(place === "shaft" && known.place === undefined ? [ask("place", ["housing", "shaft"])] : []),
    ...(kind === "acceptance" && known.condition === undefined ? [ask("condition", ["new", "in service"])] : []),
  ];
}

function provenanceOf(scheme: Scheme, classes: readonly MachineClass[], known: KnownFacts): Provenance {
  const criteria = classes.flatMap((one) => one.criteria.filter((criterion) => applies(criterion, known) !== false));
  return worstProvenance(
    criteria.flatMap(({ limits, source, limitSources }) =>
      namesOf(scheme)
        .filter((name) => (limits[name] ?? null) !== null)
        .map((name) => (limitSources?.[name] ?? source).provenance),
    ),
  );
}

function reasonFor(scheme: Scheme, known: KnownFacts, chosen: MachineClass | undefined): string {
  const { type, condition } = known;
  const who = type === undefined ? "any machine of its scope" : `a ${type}`;
  const when = scheme.kind === "acceptance" ? "acceptance test" : (condition ?? "in service");
  const where = scheme.place === "shaft" ? "readings of the shaft" : "readings on the housing";
  const which = chosen === undefined ? "" : conditionText(conditionOf(chosen));
  return `${who}, ${when}, ${where}: ${scheme.scope}${which && `; class: ${which}`}`;
}

function candidateOf(scheme: Scheme, match: MachineMatch, known: KnownFacts): Candidate {
  const scope = missingOfScope(scheme, known);
  const lowest = match.chosen === undefined ? lowestLimits(scheme, match) : undefined;
  const chosen = match.chosen ?? lowest;
  const missing = [...scope, ...match.missing.filter(({ fact }) => scope.every((one) => one.fact !== fact))];
  const asks = scope.length > 0 || chosen === undefined;
  const provenance = provenanceOf(scheme, chosen === undefined ? match.open : [chosen], known);
  return {
    scheme: scheme.id,
    standard: scheme.standard,
    edition: scheme.edition,
    kind: scheme.kind,
    status: asks ? "asks" : lowest === undefined ? "applies" : "assumes",
    reason: reasonFor(scheme, known, chosen),
    missing,
    assumedFacts: [
      ...match.assumed,
      ...(lowest === undefined
        ? []
        : lowestLimitsAssumed(lowest, match.missing, withNominalPower([scheme], known).known)),
    ],
    ...(chosen !== undefined && { machineClass: conditionOf(chosen) }),
    provenance,
    verified: isVerified(provenance),
    withdrawn: scheme.status === "withdrawn",
    ...(scheme.replacedBy !== undefined && { replacedBy: scheme.replacedBy }),
    ...(scheme.byContract && { byContract: true }),
  };
}

const SCHEMES = { parameter: "schemes" };

/**
 * Which tables are for a machine, best first, each with the reason, and what is missing; and which are not, and why.
 *
 * Nothing is guessed silently: a fact that a table needs and was not given is asked for in `missing`; where the
 * lowest limits are a sensible stand-in, the candidate says what it `assumes`. The support may be given by
 * `naturalFrequency` and `speed` (see {@link supportOf}).
 *
 * @param nameplate - the machine, as data or in words; `place` and `condition` narrow the choice
 * @param schemes - the schemes to choose from; the built-in ones if not given
 * @throws {@link VeladisError} for facts that are none, as {@link classify}; never for missing ones
 * @example
 * ```ts
 * import { selectSchemes } from "veladis/severity";
 *
 * const { candidates, excluded, missing } = selectSchemes("fan 90 kW 1480 r/min rigid, in service, housing");
 * candidates[0]?.scheme; // => "iso-14694-2003"
 * candidates[0]?.missing.map((one) => one.fact); // => ["category"]
 * excluded.find((one) => one.scheme === "iso-10816-3-2009")?.reason;
 * // => "a fan below 300 kW: ISO 14694, not ISO 10816-3"
 * missing[0]?.allowed; // => ["BV-1", "BV-2", "BV-3", "BV-4", "BV-5"]
 * ```
 */
export function selectSchemes(nameplate: MachineRef, schemes: readonly Scheme[] = builtInSchemes): Selection {
  return withParameters({ schemes, nameplate }, () => {
    const known = inPlace({ parameter: "nameplate" }, () => machineFacts(nameplate));
    const candidates: Candidate[] = [];
    const excluded: Excluded[] = [];
    for (const scheme of inOrder(schemesOf(requireList(schemes, "schemes as a list", SCHEMES), SCHEMES), known)) {
      const match = matchMachine(scheme, known);
      const { id, standard, edition } = scheme;
      if (match.exclusion !== undefined) {
        const { expected, received, reason } = match.exclusion;
        excluded.push({
          scheme: id,
          standard,
          edition,
          reason: reason ?? `for ${expected}; this machine: ${received}`,
        });
      } else {
        candidates.push(candidateOf(scheme, match, known));
      }
    }
    const missing = new Map<string, { fact: MissingFact; times: number }>();
    for (const fact of candidates.flatMap((one) => one.missing)) {
      const known = missing.get(fact.fact);
      const allowed = [...new Set([...(known?.fact.allowed ?? []), ...(fact.allowed ?? [])])];
      missing.set(fact.fact, {
        fact: { ...fact, ...(allowed.length > 0 && { allowed }) },
        times: (known?.times ?? 0) + 1,
      });
    }
    const asked = [...missing.values()].sort((a, b) => b.times - a.times).map(({ fact }) => fact);
    return { candidates, excluded, missing: asked };
  });
}
