import { VeladisError } from "../../core/index";
import { hertz } from "../../frequency/index";
import { parseMachine } from "../../severity/index";

/** How far two writings of one speed may lie apart, rounded as they are. */
const ROUNDED = 1e-3;

/** A lowest and a highest speed in hertz, of a speed that is held both the same. */
type Speeds = readonly [low: number, high: number];

/** What is assumed of a speed that comes of poles: an induction motor turns slower. */
const ofPoles = /, the synchronous speed;/;

/** The speeds of a machine in words; undefined where they say none, or poles alone, of which a speed beside them is held by words. */
function speedsOf(machine: string, { told }: { readonly told: boolean }): Speeds | undefined {
  const { speed, assumedFacts } = parseMachine(machine);
  if (speed === undefined || (told && assumedFacts?.some((fact) => ofPoles.test(fact)))) return undefined;
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
  const said = machine === "" ? undefined : speedsOf(machine, { told: told !== undefined });
  if (told === undefined) return said;
  const differs = said !== undefined && (told < said[0] * (1 - ROUNDED) || told > said[1] * (1 + ROUNDED));
  if (!differs) return [told, told];
  throw new VeladisError("unknown-option", {
    expected: `one speed for the machine, which its words say is ${written(said)}`,
    received: `--speed of ${written([told, told])}`,
    option: "speed",
  });
}

/**
 * The words on a machine with the speed that is told beside them, where they say none themselves.
 *
 * @throws {@link VeladisError} `out-of-range` for a speed that the poles in the words do not explain
 */
export function withSpeed(machine: string, told: number | undefined): string {
  if (told === undefined || (machine !== "" && speedsOf(machine, { told: true }) !== undefined)) return machine;
  // per minute: hertz may be those of a line; behind a comma, to be of the machine that is judged and not of its driver
  const speed = `${Number((60 * told).toPrecision(12))} r/min`;
  const all = machine.trim() === "" ? speed : `${machine}, ${speed}`;
  parseMachine(all);
  return all;
}
