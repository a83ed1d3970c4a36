import type { PlantMachine } from "./plant-machine";

/** Tags are one where they differ by case and blanks only. */
export function comparedTag(tag: string): string {
  return tag.trim().toLowerCase().replace(/\s+/g, " ");
}

/** The rows of the list that share a tag, by each tag as it is written; more than one where nobody can say which is meant. */
export function rowsByTag(machines: readonly PlantMachine[]): ReadonlyMap<string, readonly PlantMachine[]> {
  const groups = new Map<string, PlantMachine[]>();
  for (const one of machines) {
    const name = comparedTag(one.tag);
    const before = groups.get(name);
    if (before === undefined) groups.set(name, [one]);
    else before.push(one);
  }
  return new Map(machines.map(({ tag }) => [tag, groups.get(comparedTag(tag)) as PlantMachine[]]));
}
