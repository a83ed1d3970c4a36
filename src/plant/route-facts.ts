import { inPlace, shown, VeladisError } from "../core/index";
import { type FactValue, type Machine, machineFacts, machineNotes } from "../severity/index";

/** How far a number of a route may be from that of the list: slip and load, and hp rounded to kW; common practice, no source. */
const near: Readonly<Record<string, number>> = { speed: 0.05, power: 0.02 };

/** Whether a fact of a route is that of the list, or lies in its range. */
function agrees(fact: string, listed: FactValue, told: FactValue): boolean {
  if (typeof listed === "string" || typeof told === "string") return listed === told;
  const [low, high] = typeof listed === "number" ? [listed, listed] : listed;
  const [from, to] = typeof told === "number" ? [told, told] : told;
  const part = near[fact] ?? 0;
  return from >= low * (1 - part) && to <= high * (1 + part);
}

/** A fact as a refusal names it. */
function factWords(fact: string, value: FactValue): string {
  return `${fact} ${typeof value === "object" ? value.join(" to ") : value}`;
}

/**
 * What is to be noted of the facts that a row of a route says of its machine; refused where they say otherwise than the list.
 *
 * @throws {@link VeladisError} `out-of-range` for a fact that contradicts the list, `syntax` for words that say none
 */
export function factNotes(words: string | undefined, machine: Machine): readonly string[] {
  if (words === undefined || words.trim() === "") return [];
  return inPlace({ option: "machine" }, () => {
    const told = Object.entries(machineFacts(words)) as [string, FactValue][];
    if (told.length === 0) {
      throw new VeladisError("syntax", {
        expected: 'facts of the machine with their units, such as "90 kW" or "1485 r/min"',
        received: shown(words),
      });
    }
    const listed: Readonly<Record<string, FactValue | undefined>> = machineFacts(machine);
    const unknown: string[] = [];
    for (const [fact, value] of told) {
      const known = listed[fact];
      if (known === undefined) unknown.push(factWords(fact, value));
      else if (!agrees(fact, known, value)) {
        throw new VeladisError("out-of-range", {
          expected: `the machine as the list has it: ${factWords(fact, known)} (mend the list where the route is right)`,
          received: `${factWords(fact, value)}, of ${shown(words)}`,
        });
      }
    }
    const strange = machineNotes(words).notUnderstood.map(({ word }) => word);
    return [
      ...(unknown.length === 0
        ? []
        : [`the route says what the list does not have, and it plays no part: ${unknown.join(", ")}`]),
      ...(strange.length === 0 ? [] : [`not understood of the machine on the route: ${strange.join(", ")}`]),
    ];
  });
}
