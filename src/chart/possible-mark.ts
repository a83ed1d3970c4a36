import { label, tag } from "./markup";
import { widthOf } from "./text-width";

const HIGH = 17;
const SIZE = 11;

/** The first and last places of each run of zones that are possible. */
function runsOf(zones: readonly string[], possible: readonly string[]): [first: number, last: number][] {
  const runs: [number, number][] = [];
  zones.forEach((zone, i) => {
    if (!possible.includes(zone)) return;
    const run = runs.at(-1);
    if (run !== undefined && run[1] === i - 1) run[1] = i;
    else runs.push([i, i]);
  });
  return runs;
}

/**
 * Frames along the foot of a severity bar, round the zones that are still possible; nothing where it is one zone.
 *
 * @param edges - where zones begin and end, one more than there are names
 */
export function possibleMark(
  zones: readonly string[],
  possible: readonly string[],
  edges: readonly number[],
  height: number,
): string {
  if (possible.length < 2) return "";
  const top = height - HIGH;
  return runsOf(zones, possible)
    .map(([first, last]) => {
      const [from, to] = [edges[first] as number, edges[last + 1] as number];
      const fits = widthOf("possible", SIZE) <= to - from - 6;
      return (
        tag("rect", { kind: "possible", x: from + 1, y: top, width: Math.max(to - from - 2, 1), height: HIGH - 1 }) +
        (fits ? label((from + to) / 2, top + 12, "possible", { kind: "possible-text", "text-anchor": "middle" }) : "")
      );
    })
    .join("");
}
