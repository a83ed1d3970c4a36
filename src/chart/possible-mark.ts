import { label, tag } from "./markup";
import { widthOf } from "./text-width";

const HIGH = 17;
const SIZE = 11;

/**
 * A frame along the foot of a severity bar, round the zones that are still possible; nothing where it is one zone.
 *
 * @param edges - where zones begin and end, one more than there are names
 */
export function possibleMark(
  zones: readonly string[],
  possible: readonly string[],
  edges: readonly number[],
  height: number,
): string {
  const at = zones.flatMap((zone, i) => (possible.includes(zone) ? [i] : []));
  const [first, last] = [at[0], at.at(-1)];
  if (first === undefined || last === undefined || first === last) return "";
  const [from, to] = [edges[first] as number, edges[last + 1] as number];
  const top = height - HIGH;
  const fits = widthOf("possible", SIZE) <= to - from - 6;
  return (
    tag("rect", { class: "possible", x: from + 1, y: top, width: to - from - 2, height: HIGH - 1 }) +
    (fits ? label((from + to) / 2, top + 12, "possible", { class: "possible-text", "text-anchor": "middle" }) : "")
  );
}
