import { convertedAt, notedAmplitude } from "../amplitude/index";
import { raised, VeladisError } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { amplitudeIn, parsedType, significant, union } from "../reading/index";
import type { Machine, MachineType, SpeedRange } from "../severity/index";
import { setpointRules } from "./reason";
import type { SetpointLimit, SetpointLimits } from "./setpoint-limits";

/** What the roots are taken of, over the speed in r/min, in mil peak-to-peak. */
const [ALARM, TRIP] = [24000, 36000];

/**
 * Kinds of machine whose shafts run in fluid-film bearings, as far as the kind tells: those of ISO 7919-3:2009 (scope
 * read in a catalogue), gas turbines (ISO 7919-4; from memory) and screw compressors (API 619; from memory). Hydraulic
 * sets have a part of their own; reciprocating machines, lobe blowers, wind turbines and drives of cooling towers have
 * other bearings or other vibration (common practice, no source).
 */
// biome-ignore format: a list in the order of its sources
const kinds: readonly MachineType[] = [
  "pump", "fan", "motor", "generator", "compressor", "centrifugal chiller", "gear drive", "steam turbine",
  "gas turbine",
  "screw compressor",
];

/** Speeds in r/min that the tables of shafts are for: ISO 7919-3:2009 (scope read in a catalogue). */
const [SLOWEST, FASTEST] = [1000, 30_000];

/** Refuses a kind of machine that the rule is not for. */
function requireKind(type: Machine["type"]): void {
  if (type === undefined || kinds.includes(type)) return;
  throw new VeladisError("out-of-range", {
    expected:
      'a machine with fluid-film bearings, for rule "api shaft", since its limits are for shafts that run in them',
    received: `a ${type}`,
    allowed: kinds,
  });
}

/** The highest speed, whose limits are the lowest. */
function highestSpeed(machine: Machine | undefined): number {
  const speed: Frequency | SpeedRange | undefined = machine?.speed;
  if (speed === undefined)
    throw new VeladisError("missing-fact", {
      expected: 'the running speed of the machine, as in "3000 r/min": the limits of rule "api shaft" fall with it',
      received: "a machine without speed",
      fact: "speed",
    });
  const ends = typeof speed === "object" && "from" in speed ? [speed.from, speed.to] : [speed, speed];
  const [low, high] = ends.map((one) => hertz(one) * 60) as [number, number];
  if (raised(low) >= SLOWEST && high <= raised(FASTEST)) return high;
  throw new VeladisError("out-of-range", {
    expected: `a speed of ${SLOWEST} to ${FASTEST} r/min, for rule "api shaft", as in the tables of ISO for shafts`,
    received: `${significant(low < SLOWEST ? low : high)} r/min`,
  });
}

/**
 * The alarm and trip that a handbook quotes API to recommend for the vibration of the shaft: the roots of 24 000 and
 * 36 000 over the speed in r/min, in mil peak-to-peak; of a range of speeds the highest.
 *
 * @throws {@link VeladisError} `wrong-quantity` for setpoints of anything but a displacement, `missing-fact` without
 *   the speed, `out-of-range` for a machine read on the housing, of another kind or at another speed
 */
export function limitsOfApiShaft(machine: Machine | undefined, type: string): SetpointLimits {
  const { quantity } = parsedType(type);
  if (quantity !== "displacement")
    throw new VeladisError("wrong-quantity", {
      expected: 'setpoints of displacement, such as "um pp", for rule "api shaft"',
      received: type,
    });
  if (machine?.place === "housing")
    throw new VeladisError("out-of-range", {
      expected: 'readings of the shaft, for rule "api shaft"',
      received: "a machine read on the housing",
    });
  requireKind(machine?.type);
  const speed = highestSpeed(machine);
  const { source } = setpointRules["api shaft"];
  const limit = (name: string, root: number): SetpointLimit => {
    const text = `API ${name}: root(${root}/${significant(speed)}) mil peak-to-peak`;
    const amplitude = convertedAt(
      notedAmplitude(amplitudeIn("mil pp", Math.sqrt(root / speed)), text),
      type,
      undefined,
    );
    return { amplitude, text, source };
  };
  const [lower, upper] = [limit("alarm", ALARM), limit("trip", TRIP)];
  return {
    kind: "operation",
    rule: setpointRules["api shaft"],
    lower,
    upper,
    ceilings: null,
    compared: [],
    assumed: union(lower.amplitude.assumed, upper.amplitude.assumed),
    leftOut: [],
    atSpeedOnly: [],
    speedVaries: false,
    schemes: [],
    assumedFacts: [
      ...(machine?.place === undefined ? ['place shaft: not given, assumed, since rule "api shaft" is for it'] : []),
      ...(machine?.type === undefined ? ["type: not given, and taken for a machine with fluid-film bearings"] : []),
    ],
    setAside: [],
  };
}
