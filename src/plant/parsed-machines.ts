import type { PlantMachine } from "./plant-machine";

/** Lists of machines that a parser of this library made: frozen, they need no second look. */
const parsed = /* @__PURE__ */ new WeakSet<readonly PlantMachine[]>();

/** Notes a frozen list of frozen machines as one that a parser made. */
export function asParsed(machines: readonly PlantMachine[]): readonly PlantMachine[] {
  parsed.add(machines);
  return machines;
}

/** Whether a list of machines is one that a parser made. */
export function isParsed(machines: readonly PlantMachine[]): boolean {
  return parsed.has(machines);
}
