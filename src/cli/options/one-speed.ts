import { VeladisError } from "../../core/index";
import { hertz } from "../../frequency/index";
import { parseMachine } from "../../severity/index";

/** How far two writings of one speed may lie apart, rounded as they are. */
const ROUNDED = 1e-3;

/** A lowest and a highest speed in hertz, of a speed that is held both the same. */
type Speeds = readonly [low: number, high: number];

/** The speeds of a machine in words; undefined where they say none. */
function speedsOf(machine: string): Speeds | undefined {
  const { speed } = parseMachine(machine);
  if (speed === undefined) return undefined;
  if (typeof speed === "object" && "from" in speed) return [hertz(speed.from), hertz(speed.to)];
  return [hertz(speed), hertz(speed)];
}

function written([low, high]: Speeds): string {
  const [from, to] = [low, high].map((one) => Number((60 * one).toPrecision(6)));
  return from === to ? `${from} r/min` : `${from} to ${to} r/min`;
}

/**
 * The running speed of a machine in hertz, from the lowest to the highest: the one that is told, else that of its words.
 *
 * @throws {@link VeladisError} `unknown-option` for two that differ: which was meant nobody can tell
 */
export function oneSpeed(told: number | undefined, machine: string): Speeds | undefined {
  const said = machine === "" ? undefined : speedsOf(machine);
  if (told === undefined) return said;
  const differs = said !== undefined && (told < said[0] * (1 - ROUNDED) || told > said[1] * (1 + ROUNDED));
  if (!differs) return [told, told];
  throw new VeladisError("unknown-option", {
    expected: `one speed for the machine, which its words say is ${written(said)}`,
    received: `--speed of ${written([told, told])}`,
    option: "speed",
  });
}
