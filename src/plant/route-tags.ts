import { nearest, shown, VeladisError } from "../core/index";
import type { SchemeRef } from "../severity/index";
import { rowsByTag } from "./compared-tag";
import { limitsOfRow } from "./machine-verdict";
import type { Plant, PlantMachine } from "./plant-machine";
import type { RouteMachine } from "./route-basis";

/** Most tags of which the near ones are looked for. */
const MOST_TAGS = 5000;

/** What a tag of a route leads to: a machine to judge by, or why none may be. */
type Found = RouteMachine | VeladisError;

function twice(tag: string, alike: readonly PlantMachine[]): VeladisError {
  return new VeladisError("out-of-range", {
    expected: "a tag that one row of the list has",
    received: `${shown(tag)} on lines ${alike.map(({ line }) => line).join(" and ")} of the list`,
    option: "tag",
  });
}

/**
 * Finds the machine of a tag: refused for one that no row of the list has, one that two have (case and blanks make no
 * difference), and one whose row was refused,
 * as a whole or in one of its cells.
 */
export function machineByTag(plant: Plant, schemes: readonly SchemeRef[] | undefined): (tag: string) => Found {
  const rows = new Map<string, PlantMachine | VeladisError>();
  for (const [tag, alike] of rowsByTag(plant.machines)) {
    rows.set(tag, alike.length === 1 ? (alike[0] as PlantMachine) : twice(tag, alike));
  }
  for (const { tag, line, message, column } of plant.refused) {
    if (tag === "") continue;
    rows.set(
      tag,
      new VeladisError("missing-fact", {
        expected: "a row of the list that can be read",
        received: `line ${line}${column === undefined ? "" : `, column ${shown(column)}`}, which was refused: ${message}`,
        option: "tag",
      }),
    );
  }
  const found = new Map<string, Found>();
  const find = (tag: string): Found => {
    const row = rows.get(tag);
    if (row === undefined) {
      return new VeladisError("unknown-option", {
        expected: "a tag that a row of the list has",
        received: shown(tag),
        didYouMean: rows.size > MOST_TAGS ? [] : nearest(tag, rows.keys()),
        option: "tag",
      });
    }
    if (row instanceof VeladisError) return row;
    try {
      const alike = JSON.stringify([row.machine, row.table, row.limits]);
      return { machine: row, limits: limitsOfRow(row, schemes), schemes, alike };
    } catch (error) {
      if (!VeladisError.is(error)) throw error;
      return error;
    }
  };
  return (tag) => {
    const known = found.get(tag);
    if (known !== undefined) return known;
    const one = find(tag);
    // of a flood of tags that no row has none is kept
    if (rows.has(tag)) found.set(tag, one);
    return one;
  };
}
