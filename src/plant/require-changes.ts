import { orNothing, requireChoice, requireGiven, requireShape, type Shape } from "../core/index";
import { changedSettings } from "./parse-changes";
import type { PlantChange } from "./plant-change";
import { day } from "./plant-shape";

function changeShape(): Shape {
  return {
    line: "number",
    date: day,
    tag: "text",
    setting: (value: unknown, where: string) => requireChoice(value, changedSettings, where),
    old: "text",
    new: "text",
    reason: "text",
    who: "text",
    approvedBy: orNothing("text"),
    until: orNothing(day),
    putBack: orNothing(day),
  };
}

/** The entries themselves, as {@link parseChanges} returns them. */
export function requireChanges(changes: readonly PlantChange[]): readonly PlantChange[] {
  requireGiven(changes, "entries of a record as parseChanges returns them", { parameter: "changes" });
  requireShape(changes, [changeShape()], "changes");
  return changes;
}

/** The entry itself, as one of {@link parseChanges}. */
export function requireChange(change: PlantChange): PlantChange {
  requireGiven(change, "an entry of a record of changes", { parameter: "change" });
  requireShape(change, changeShape(), "change");
  return change;
}
