import { hertz } from "../frequency/index";
import { type MachineRef, parseMachine } from "../severity/index";

/** The running speed of a machine, by which limits of other quantities are carried to the type of the setpoints. */
export interface RunningSpeed {
  /** The lowest that is possible. */
  readonly hertz: number;
  readonly isRange: boolean;
}

/** The running speed of a machine, the lowest of a range; undefined where it is not known. */
export function runningSpeed(machine: MachineRef | undefined): RunningSpeed | undefined {
  const speed = (typeof machine === "string" ? parseMachine(machine) : machine)?.speed;
  if (speed === undefined) return undefined;
  return typeof speed === "object" && "from" in speed
    ? { hertz: hertz(speed.from), isRange: true }
    : { hertz: hertz(speed), isRange: false };
}
