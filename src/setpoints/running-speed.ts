import { type Frequency, hertz } from "../frequency/index";
import { type MachineRef, parseMachine, type SpeedRange } from "../severity/index";

/** The running speed of a machine, by which limits of other quantities are carried to the type of the setpoints. */
export interface RunningSpeed {
  /** The lowest that is possible. */
  readonly hertz: number;
  readonly isRange: boolean;
  /** True where it is the frequency that a setpoint says itself, and no speed. */
  readonly isOwn?: boolean;
}

function speedOf(machine: MachineRef | undefined): Frequency | SpeedRange | undefined {
  return (typeof machine === "string" ? parseMachine(machine) : machine)?.speed;
}

function isRange(speed: Frequency | SpeedRange): speed is SpeedRange {
  return typeof speed === "object" && "from" in speed;
}

/** The running speed of a machine, the lowest of a range; undefined where it is not known. */
export function runningSpeed(machine: MachineRef | undefined): RunningSpeed | undefined {
  const speed = speedOf(machine);
  if (speed === undefined) return undefined;
  return isRange(speed) ? { hertz: hertz(speed.from), isRange: true } : { hertz: hertz(speed), isRange: false };
}

/** The ends of what the running speed of a machine may be, in hertz: two, one, or none where it is not known. */
export function speedEnds(machine: MachineRef | undefined): readonly number[] {
  const speed = speedOf(machine);
  if (speed === undefined) return [];
  return isRange(speed) ? [hertz(speed.from), hertz(speed.to)] : [hertz(speed)];
}

/** The frequency of a machine to convert at; a speed that varies is none. */
export function fixedHertz(machine: MachineRef | undefined): number | undefined {
  const speed = speedOf(machine);
  return speed === undefined || isRange(speed) ? undefined : hertz(speed);
}
