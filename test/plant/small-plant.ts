import { parseAmplitude } from "../../src/reading/index";
import type { PlantColumn } from "../../src/plant/columns";
import type { Plant, PlantMachine } from "../../src/plant/plant-machine";

/** What may be told of a machine besides; undefined for what is left out. */
type More = { readonly [Key in keyof PlantMachine]?: PlantMachine[Key] | undefined };

/** A machine of a small list; what matters to a test is told, and the cells where they are needed. */
export function machine(tag: string, line: number, more: More = {}): PlantMachine {
  return {
    tag,
    line,
    machine: { type: "fan" },
    trip: parseAmplitude("9 mm/s rms"),
    alarm: parseAmplitude("5.6 mm/s rms"),
    settings: {},
    device: {},
    own: {},
    ...more,
  } as PlantMachine;
}

/** The same with nothing but its cells. */
export function celled(tag: string, line: number, cells: Partial<Record<PlantColumn, string>>): PlantMachine {
  return machine(tag, line, { cells: { tag, kind: "fan", ...cells } });
}

/** A list of machines, nothing refused. */
export function plantOf(...machines: readonly PlantMachine[]): Plant {
  return { machines, refused: [], ownColumns: [] };
}
