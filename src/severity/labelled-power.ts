import { VeladisError } from "../core/index";
import { facts } from "./facts";
import { type Interval, intervalText } from "./interval";
import type { KnownFacts } from "./machine";
import { type MachineType, machineTypes } from "./machine-types";
import type { MachineClass, Scheme } from "./scheme";
import { labelsAgree, verdict } from "./verdict";

const tight = 1e-6;

/** The ends of an interval as a range of which every value is possible. */
function rangeOf({ from, above, to, below }: Interval): readonly [number, number] {
  const low = from ?? (above === undefined ? tight : above * (1 + tight));
  const high = to ?? (below === undefined ? Number.MAX_VALUE : below * (1 - tight));
  return [low, high];
}

/** Why a label of a class and a power cannot both be true. */
function refuse(label: string, { standard, edition }: Scheme, power: Interval, received: string): never {
  throw new VeladisError("out-of-range", {
    expected: `a power that agrees with ${label} of ${standard} (${edition}): ${intervalText(power, "kW")}`,
    received: `${label} and a power of ${received}`,
  });
}

/**
 * The facts with the power that a label of a group or class tells, where the power itself was not given.
 *
 * @throws {@link VeladisError} `out-of-range` where label and power contradict each other
 */
export function withLabelledPower(schemes: readonly Scheme[], known: KnownFacts): KnownFacts {
  let told = known;
  for (const fact of ["group", "class"] as const) {
    const label = known[fact];
    if (label === undefined) continue;
    const isNamed = ({ named }: MachineClass) =>
      named?.[fact] !== undefined &&
      [named[fact]].flat().some((one) => labelsAgree(fact, one as string, label as string));
    const scheme = schemes.find(({ classes }) => classes.some(isNamed));
    const power = scheme?.classes.find(isNamed)?.by?.power;
    if (scheme === undefined || power === undefined) continue;
    const { type, power: given } = known;
    if (given === undefined) {
      if (known.shaftHeight === undefined) told = { ...told, power: rangeOf(power) };
      continue;
    }
    const text = `${typeof given === "object" ? given.join(" to ") : given} ${facts.power.unit}`;
    // of an electrical machine the shaft height decides: a large one may have a small power, never the other way round
    const electrical = type !== undefined && machineTypes[type as MachineType].electrical;
    const reach = electrical ? { ...power, from: undefined, above: undefined } : power;
    const scope = scheme.within?.power;
    if (verdict({ power: reach as Interval }, "power", known) === "unmet")
      refuse(`${fact} ${label}`, scheme, power, text);
    if (scope && verdict({ power: scope }, "power", known) === "unmet") refuse(`${fact} ${label}`, scheme, scope, text);
  }
  return told;
}
