import { parsedType } from "../reading/index";
import { type MachineRef, parseMachine, type Scheme } from "../severity/index";

/** What a scheme takes for the place of setpoints in displacement, which housings and shafts both have, where it was not given. */
export function assumedPlace({ place }: Scheme, machine: MachineRef | undefined, type: string): readonly string[] {
  const given = (typeof machine === "string" ? parseMachine(machine) : machine)?.place;
  if (given !== undefined || parsedType(type).quantity !== "displacement") return [];
  const other = place === "housing" ? "shaft" : "housing";
  return [`place ${place}: not given; a displacement of the ${other} needs a table for the ${other}`];
}
