import { requireChoice, requireKnownOptions, shown, VeladisError } from "../core/index";
import { type Direction, type DirectionFacts, directions } from "./directions";
import { knownFacts, type Machine } from "./machine";
import { withSupport } from "./support";

const keys = /* @__PURE__ */ Object.freeze({ support: true, naturalFrequency: true });
const ways = /* @__PURE__ */ Object.freeze({ horizontal: true, vertical: true, axial: true });

/** How an answer says that a support is that of one direction. */
const TOLD = "told for this direction";

/** True for what an answer says of a support that was told for the direction of the reading. */
export function isOfDirection(text: string): boolean {
  return text.endsWith(TOLD);
}

/** A machine in the direction of its reading, and what was taken for it, in words. */
export interface InDirection {
  readonly machine: Machine;
  readonly assumed: readonly string[];
}

function inOne({ support, naturalFrequency, ...rest }: Machine, told: DirectionFacts | undefined): Machine {
  if (told !== undefined) return { ...rest, ...told };
  return { ...rest, ...(support && { support }), ...(naturalFrequency && { naturalFrequency }) };
}

function toldText(direction: Direction, { support, naturalFrequency }: DirectionFacts): string {
  const what = support ?? (naturalFrequency === undefined ? "none" : "by the natural frequency");
  return `${direction} reading, support ${what}: ${TOLD}`;
}

/**
 * The machine with the support of the direction of its reading. Where the direction is not told and the support is not the
 * same in all of them, it is left open, so that the lower limits are taken.
 *
 * @throws {@link VeladisError} `unknown-option` for a direction or a fact there is none of, `wrong-type`, `out-of-range`
 *   for a support and a natural frequency of one direction that contradict each other
 */
export function inDirection({ byDirection, direction, ...machine }: Machine): InDirection {
  if (direction !== undefined)
    requireChoice(direction, directions, "the direction of the reading", { option: "direction" });
  if (byDirection === undefined) return { machine, assumed: [] };
  requireKnownOptions(byDirection, ways, {
    what: "a direction",
    form: "facts by direction such as { axial: { support } }",
    place: { parameter: "byDirection" },
  });
  const found = directions.map((one) => {
    const told = byDirection[one];
    if (told !== undefined)
      requireKnownOptions(told, keys, {
        what: "a fact of a direction",
        form: 'facts such as { support: "rigid" }',
        place: { parameter: "byDirection" },
      });
    const own = inOne(machine, told);
    return { one, told, own, support: withSupport(knownFacts(own)).support };
  });
  if (direction !== undefined) {
    const { told, own } = found.find(({ one }) => one === direction) as (typeof found)[number];
    return { machine: own, assumed: told === undefined ? [] : [toldText(direction, told)] };
  }
  const [{ support } = {}] = found;
  const { support: _, naturalFrequency: __, ...rest } = machine;
  if (support !== undefined && found.every((one) => one.support === support)) {
    return { machine: { ...rest, support: support as "rigid" }, assumed: [] };
  }
  return { machine: rest, assumed: ["direction of the reading: not given, and the support differs by direction"] };
}

/**
 * The machine for a reading of a point in a direction.
 *
 * @throws {@link VeladisError} `out-of-range` where another direction is told
 */
export function towards(machine: Machine, direction: Direction | undefined): Machine {
  if (direction === undefined || machine.byDirection === undefined) return machine;
  if (machine.direction === undefined || machine.direction === direction) return { ...machine, direction };
  throw new VeladisError("out-of-range", {
    expected: `a point in the ${machine.direction} direction, which is told of the reading`,
    received: shown(direction),
    parameter: "direction",
  });
}
