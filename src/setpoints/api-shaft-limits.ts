import { convertedAt, notedAmplitude } from "../amplitude/index";
import { VeladisError } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { amplitudeIn, parsedType, significant, union } from "../reading/index";
import type { Machine, SpeedRange } from "../severity/index";
import { setpointRules } from "./reason";
import type { SetpointLimit, SetpointLimits } from "./setpoint-limits";

/** What the roots are taken of, over the speed in r/min, in mil peak-to-peak. */
const [ALARM, TRIP] = [24000, 36000];

/** The highest speed, whose limits are the lowest. */
function highestSpeed(machine: Machine | undefined): number {
  const speed: Frequency | SpeedRange | undefined = machine?.speed;
  if (speed === undefined)
    throw new VeladisError("missing-fact", {
      expected: 'the running speed of the machine, as in "3000 r/min": the limits of rule "api shaft" fall with it',
      received: "a machine without speed",
    });
  return hertz(typeof speed === "object" && "from" in speed ? speed.to : speed) * 60;
}

/**
 * The alarm and trip that a handbook quotes API to recommend for the vibration of the shaft: the roots of 24 000 and
 * 36 000 over the speed in r/min, in mil peak-to-peak; of a range of speeds the highest.
 *
 * @throws {@link VeladisError} `wrong-quantity` for setpoints of anything but a displacement, `missing-fact` without
 *   the speed, `out-of-range` for a machine read on the housing
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
    assumedFacts:
      machine?.place === undefined ? ['place shaft: not given, assumed, since rule "api shaft" is for it'] : [],
    setAside: [],
  };
}
