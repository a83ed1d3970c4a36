import type { PlantChange } from "../../plant/index";
import { dashed, wrapped } from "./wrapped";

/** A cell in words. */
function words(cell: string): string {
  return cell === "" ? "nothing" : cell;
}

/** An entry of a record of changes, what is to be known of it, and where it went. */
export function changeText(
  { date, tag, setting, old, new: now, reason, who, approvedBy, until, putBack }: PlantChange,
  path: string | undefined,
  remarks: readonly string[],
  cautions: readonly string[],
): string {
  const what =
    setting === "bypass"
      ? now === ""
        ? `bypass of ${old} lifted`
        : `bypass of ${now}`
      : `${setting}: ${words(old)} to ${words(now)}`;
  const more = [
    `reason: ${reason}; by ${who}`,
    ...(approvedBy === undefined ? [] : [`approved by ${approvedBy}`]),
    ...(until === undefined ? [] : [`until ${until}`]),
    ...(putBack === undefined ? [] : [`put back ${putBack}`]),
  ];
  const where = path === undefined ? "checked, nothing written" : `added to ${path}`;
  return `${wrapped(`${date}  ${tag}  ${what}`)}${wrapped(more.join("; "), "  ", "  ")}${wrapped(where)}${dashed([...remarks, ...cautions])}`;
}
