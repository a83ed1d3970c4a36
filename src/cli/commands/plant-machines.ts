import { attempt, shown, VeladisError, visibleText } from "../../core/index";
import { limitsOfRow, type Plant, type PlantMachine, type RefusedRow, rowsByTag } from "../../plant/index";
import type { Scheme } from "../../severity/index";
import type { NamedMachine, RefusedMachine } from "../../sql/index";

/** A machine of a plant's list for SQL, with its line. */
export type PlantListed = (NamedMachine | RefusedMachine) & { readonly line: number };

function refusedBefore({ code, column, message }: RefusedRow): VeladisError {
  return new VeladisError("missing-fact", {
    expected: "a row of the list that can be read",
    received: `${column === undefined ? "one" : `one with its column ${shown(column)}`} refused as ${code}: ${message}`,
  });
}

function twice(tag: string, rows: readonly PlantMachine[]): VeladisError {
  return new VeladisError("syntax", {
    expected: "a tag that one row of the list has",
    received: `${shown(tag)} on lines ${rows.map(({ line }) => line).join(" and ")}`,
  });
}

function namedOf(row: PlantMachine, schemes: readonly Scheme[] | undefined): PlantListed {
  const { tag: name, line, machine } = row;
  const limits = attempt(() => limitsOfRow(row, schemes));
  if (!limits.ok) return { name, line, error: limits.error };
  const { scheme } = limits.value;
  return { name, line, machine, ...(scheme !== undefined && { scheme }) };
}

/**
 * The machines of a plant's list by their tags, each with the table or the limits that its row names; one that was refused, or
 * shares its tag, with the reason. A tag that no engine can hold leaves its row among the unnamed.
 */
export function plantMachines(plant: Plant, schemes: readonly Scheme[] | undefined) {
  const alike = rowsByTag(plant.machines);
  const refused = new Map<string, PlantListed>();
  let unnamed = 0;
  for (const row of plant.refused) {
    if (row.tag === "") unnamed++;
    else if (!refused.has(row.tag)) refused.set(row.tag, { name: row.tag, line: row.line, error: refusedBefore(row) });
  }
  const found = [...alike].flatMap(([tag, rows]): PlantListed[] => {
    const first = rows.find((one) => one.tag === tag) as PlantMachine;
    if (refused.has(tag)) return [];
    return [rows.length > 1 ? { name: tag, line: first.line, error: twice(tag, rows) } : namedOf(first, schemes)];
  });
  const all = [...found, ...refused.values()].sort((a, b) => a.line - b.line);
  const isName = ({ name }: PlantListed): boolean => visibleText(name) === name;
  const machines = all.filter(isName);
  const unheld = all
    .filter((one) => !isName(one))
    .map(({ name, line }) => ({
      line,
      error: new VeladisError("syntax", { expected: "a tag without control characters", received: shown(name) }),
    }));
  return { machines, unnamed: unnamed + unheld.length, unheld };
}
