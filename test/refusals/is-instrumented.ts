import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Whether the sources of a floor are those of a mutation run. */
export function isInstrumented(floor: string): boolean {
  const folder = fileURLToPath(new URL(`../../src/${floor}/`, import.meta.url));
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .some((name) => readFileSync(folder + name, "utf8").includes("stryMutAct"));
}
