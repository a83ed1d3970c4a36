import { convertAmplitude } from "../amplitude/index";
import { attempt, provenances, type Source, sourceText, VeladisError } from "../core/index";
import { type Amplitude, amplitudeIn, type ReadingType, writtenIn, writtenValue } from "../reading/index";
import {
  changeFromBaseline,
  conditionText,
  type Limit,
  type MachineLadder,
  type Scheme,
  type SchemeRef,
  schemeById,
  schemeOf,
  type Verdict,
} from "../severity/index";
import { ladderBy, type MachineLimits, verdictBy } from "./machine-verdict";
import type { PlantMachine } from "./plant-machine";
import { isPlain } from "./route-reading";
import { type SetpointsTold, setpointsTold } from "./route-setpoints";
import type { AllowedChange, BaselineInType, RouteBasis, RouteLimit, RouteVerdict } from "./route-verdict";

/** A machine with what judges it. */
export interface RouteMachine {
  readonly machine: PlantMachine;
  readonly limits: MachineLimits;
  readonly schemes: readonly SchemeRef[] | undefined;
  /** What decides its limits, as a text: the same for machines that are judged alike. */
  readonly alike: string;
}

/** A zone with what goes with it, whatever the size of the reading in it. */
export type ZoneFound = Pick<RouteVerdict, "zone" | "worst" | "headline" | "limit">;

/** What judges readings in one type of all machines that are judged alike. */
export interface AlikeBasis {
  readonly basis: Omit<RouteBasis, "tag" | "baseline">;
  /** The zones that were found so far, by their numbers. */
  readonly zonesFound: Map<number, ZoneFound>;
  /** Where the limits that judge are measured. */
  readonly measuredOn: readonly string[];
  /** Undefined for readings with a history, of which each is judged by itself. */
  readonly ladder: MachineLadder | undefined;
}

/** The basis of a machine, with what judges the readings that rest on it. */
export interface JudgedBasis extends AlikeBasis {
  readonly basis: RouteBasis;
  /** Its number. */
  readonly at: number;
  /** The alarm and the trip of the machine. */
  readonly setpoints: SetpointsTold;
}

const FREQUENCY =
  'the frequency of the vibration, as in "6 mil pp at 1490 r/min" or in a column at: the limits of this machine are of another quantity, and its running speed is not taken for it';

/** Refuses a reading whose quantity no limit of the machine has, without its frequency: the running speed would be a guess. */
function requireOwnQuantity({ quantity, hertz }: Amplitude, { judgements }: Verdict): void {
  const limited = judgements.flatMap(({ criteria }) => criteria.map((one) => one.quantity));
  if (hertz !== undefined || limited.includes(quantity)) return;
  throw new VeladisError("missing-frequency", {
    expected: FREQUENCY,
    received: `a reading of ${quantity} for limits of ${[...new Set(limited)].join(" and ")}`,
    option: "at",
  });
}

/** The limits between the zones of a verdict, of several tables and quantities the lowest. */
function limitsBetween({ judgements, kind }: Verdict): readonly RouteLimit[] {
  const lowest = new Map<string, number>();
  for (const one of judgements) {
    for (const { limits, bound } of one.kind === kind ? one.criteria : []) {
      // of one that can only tell what is possible no limit counts for the zone
      for (const [name, limit] of bound === "most" ? [] : Object.entries<Limit>(limits)) {
        lowest.set(name, Math.min(lowest.get(name) ?? Number.POSITIVE_INFINITY, writtenValue(limit)));
      }
    }
  }
  return Object.freeze([...lowest].map(([name, value]) => Object.freeze({ name, value })));
}

/** The sources of all limits of a verdict, each once. */
function sourcesOf({ judgements }: Verdict): readonly Source[] {
  const all = judgements.flatMap(({ criteria }) =>
    criteria.flatMap(({ limits }) => Object.values<Limit>(limits).map(({ source }) => source)),
  );
  return Object.freeze([...new Map(all.map((source) => [sourceText(source), source])).values()]);
}

/** The least that a change may amount to by any of the tables, or why that is not known. */
function allowedBy(reading: Amplitude, machine: RouteMachine, verdict: Verdict): AllowedChange | string {
  const byId = (id: string): Scheme =>
    machine.limits.scheme ??
    machine.schemes?.map((one) => schemeOf(one)).find((one) => one.id === id) ??
    schemeById(id);
  const zones = verdict.judgements.filter(({ kind }) => kind === "zones");
  if (zones.length === 0) return "the table has no zone B, by whose limit a change is told from none";
  const found = zones.map(({ scheme }) =>
    attempt(() =>
      changeFromBaseline(reading, reading, {
        ...{ scheme: byId(scheme), machine: machine.machine.machine, assume: "lowest limits" },
      }),
    ),
  );
  const changes = found.flatMap((one) => (one.ok ? [one.value] : []));
  const [first, ...others] = changes;
  if (first === undefined) return found.flatMap((one) => (one.ok ? [] : [one.error.message]))[0] as string;
  const least = others.reduce((low, one) => (one.allowed < low.allowed ? one : low), first);
  const { allowed: value, limit, source, provenance } = least;
  return Object.freeze({ value, limit, source, provenance });
}

/** The baseline of a machine in the type of its readings, or why it cannot be held against them. */
function baselineIn(as: ReadingType, { machine: { baseline } }: RouteMachine): BaselineInType | string | null {
  if (baseline === undefined) return null;
  const { level, date, count } = baseline;
  const converted = attempt(() => convertAmplitude(level, as));
  if (!converted.ok) return `the baseline cannot be held against it: ${converted.error.message}`;
  const { value, assumed } = converted.value;
  return Object.freeze({
    ...{ level, value, assumed: assumed ?? [] },
    ...(date !== undefined && { date }),
    ...(count !== undefined && { count }),
  });
}

/** How limits that the list states are known: nobody here has seen their source, which is no page that quotes a standard. */
const STATED = "limits as stated on the list: check them against the source that it names before relying on them";

function cautionsOf({ cautions, provenance }: Verdict, { by }: MachineLimits): readonly string[] {
  const graded = `limits ${provenances[provenance].text}`;
  return by === "limits" ? cautions.map((text) => (text.startsWith(graded) ? STATED : text)) : cautions;
}

/** A reading of some size in the same type, for what is the same for all sizes. */
function sized(reading: Amplitude): Amplitude {
  return reading.value > 0 ? reading : amplitudeIn(writtenIn(reading), 1, reading.hertz);
}

/**
 * What verdicts on readings like this one rest on, of all machines that are judged alike: in one type, at one frequency.
 *
 * @throws {@link VeladisError} `missing-frequency` for a reading of another quantity than the limits, and as {@link machineVerdict}
 */
export function alikeBasis(machine: RouteMachine, like: Amplitude): AlikeBasis {
  const reading = isPlain(like) ? sized(like) : like;
  const verdict = verdictBy(machine.machine, machine.limits, reading, machine.schemes);
  requireOwnQuantity(reading, verdict);
  const as = writtenIn(reading) as ReadingType;
  const { hertz } = reading;
  const told = { from: as, schemes: machine.schemes, ...(hertz !== undefined && { at: { hertz } }) };
  const ladder = isPlain(like) ? ladderBy(machine.machine, machine.limits, told) : undefined;
  const allowed = allowedBy(reading, machine, verdict);
  const { kind, zones, provenance, verified, confirmed, differences, setAside, unjudged } = verdict;
  const basis: AlikeBasis["basis"] = {
    ...{ as, ...(hertz !== undefined && { hertz }), chosenBy: machine.limits.by, kind, zones },
    schemes: Object.freeze(verdict.judgements.map(({ scheme }) => scheme)),
    standards: Object.freeze(
      verdict.judgements.map(({ standard, edition, machineClass }) =>
        [`${standard} (${edition})`, conditionText(machineClass)].filter(Boolean).join(", "),
      ),
    ),
    limits: limitsBetween(verdict),
    ...{ provenance, verified, confirmed, differences, setAside, unjudged },
    cautions: cautionsOf(verdict, machine.limits),
    limitSources: sourcesOf(verdict),
    assumed: ladder?.judge.assumed ?? verdict.assumed,
    assumedFacts: verdict.assumedFacts,
    allowedChange: typeof allowed === "string" ? null : allowed,
    notCompared: typeof allowed === "string" ? [allowed] : [],
  };
  return { basis, ladder, zonesFound: new Map(), measuredOn: verdict.judgements.map((one) => one.measuredOn) };
}

/** The basis of one machine: that of all that are judged alike, with its own baseline. */
export function routeBasis(alike: AlikeBasis, machine: RouteMachine, at: number, like: Amplitude): JudgedBasis {
  const setpoints = setpointsTold(machine.machine, like);
  const baseline = baselineIn(alike.basis.as, machine);
  const basis: RouteBasis = Object.freeze({
    tag: machine.machine.tag,
    ...alike.basis,
    cautions: Object.freeze([...alike.basis.cautions, ...setpoints.notHeld]),
    baseline: typeof baseline === "string" ? null : baseline,
    notCompared: Object.freeze([...alike.basis.notCompared, ...(typeof baseline === "string" ? [baseline] : [])]),
  });
  return { ...alike, basis, at, setpoints };
}
