import { requireGiven, requireShape } from "../core/index";
import { isParsed } from "./parsed-machines";
import type { Plant, PlantMachine } from "./plant-machine";
import { machineShape, plantShape } from "./plant-shape";

/**
 * The plant itself, as {@link parsePlant} returns it.
 *
 * @throws {@link VeladisError} `missing-option` and `wrong-type`
 */
export function requirePlant(plant: Plant, parameter = "plant"): Plant {
  requireGiven(plant, "a plant as parsePlant returns it", { parameter });
  if (!isParsed(plant.machines)) requireShape(plant, plantShape, parameter);
  return plant;
}

/**
 * The machine itself, as {@link parsePlant} returns it.
 *
 * @throws {@link VeladisError} `missing-option` and `wrong-type`
 */
export function requireMachine(machine: PlantMachine): PlantMachine {
  requireGiven(machine, "a machine of a plant as parsePlant returns it", { parameter: "machine" });
  requireShape(machine, machineShape(), "machine");
  return machine;
}
