import { VeladisError } from "../core/index";
import { facts } from "./facts";
import { type Interval, intervalText, isBeyond } from "./interval";
import type { KnownFacts } from "./machine";
import { type MachineType, machineTypes } from "./machine-types";
import type { MachineClass, Scheme } from "./scheme";
import { labelsAgree } from "./verdict";

type Range = readonly [low: number, high: number];

const tight = 1e-6;

/** The ends of an interval as a range of which every value is possible. */
function rangeOf({ from, above, to, below }: Interval): Range {
  const low = from ?? (above === undefined ? tight : above * (1 + tight));
  const high = to ?? (below === undefined ? Number.MAX_VALUE : below * (1 - tight));
  return [low, high];
}

/** What a label of a class tells of the power, and where it stands. */
interface Told {
  readonly label: string;
  readonly scheme: Scheme;
  /** Each as it stands in the scheme, and as it must be met. */
  readonly powers: readonly (readonly [printed: Interval, met: Interval])[];
}

/** Why a label of a class and a power, or another label, cannot both be true. */
function refuse({ label, scheme: { standard, edition } }: Told, power: Interval, other: string): never {
  throw new VeladisError("out-of-range", {
    expected: `a power that agrees with ${label} of ${standard} (${edition}): ${intervalText(power, "kW")}`,
    received: `${label} and ${other}`,
  });
}

/** What the label of a fact tells of the power, by the first scheme that has it. */
function toldBy(schemes: readonly Scheme[], fact: "group" | "class", known: KnownFacts): Told | undefined {
  const label = known[fact];
  if (label === undefined) return undefined;
  const isNamed = ({ named }: MachineClass) =>
    named?.[fact] !== undefined &&
    [named[fact]].flat().some((one) => labelsAgree(fact, one as string, label as string));
  const scheme = schemes.find(({ classes }) => classes.some(isNamed));
  const by = scheme?.classes.find(isNamed)?.by;
  const power = by?.power;
  if (scheme === undefined || power === undefined) return undefined;
  // where the shaft height of an electrical machine decides, a large one may have a small power, never the other way round
  const electrical =
    by?.shaftHeight !== undefined && known.type !== undefined && machineTypes[known.type as MachineType].electrical;
  const { from: _, above: __, ...most } = power;
  const scope = scheme.within?.power;
  return {
    label: `${fact} ${label}`,
    scheme,
    powers: [[power, electrical ? most : power], ...(scope ? [[scope, scope] as const] : [])],
  };
}

/**
 * The facts with the power that a label of a group or class tells, where the power itself was not given.
 *
 * @throws {@link VeladisError} `out-of-range` where labels and power contradict each other
 */
export function withLabelledPower(schemes: readonly Scheme[], known: KnownFacts): KnownFacts {
  const { power } = known;
  let [low, high]: Range =
    typeof power === "number" ? [power, power] : typeof power === "object" ? power : [tight, Number.MAX_VALUE];
  let by = `a power of ${[power].flat().join(" to ")} ${facts.power.unit}`;
  for (const fact of ["group", "class"] as const) {
    const told = toldBy(schemes, fact, known);
    if (told === undefined) continue;
    for (const [printed, met] of told.powers) {
      if (isBeyond(met, low, high)) refuse(told, printed, by);
      const [least, most] = rangeOf(met);
      if (power === undefined) [low, high] = [Math.max(low, least), Math.min(high, most)];
    }
    if (power === undefined) by = told.label;
  }
  const isTold = power === undefined && (low > tight || high < Number.MAX_VALUE);
  return isTold ? { ...known, power: [low, high] } : known;
}
