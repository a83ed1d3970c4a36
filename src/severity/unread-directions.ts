import type { Direction } from "./directions";
import { folded } from "./label";

/** The directions of a bearing in which a standard has readings taken: horizontal, vertical, axial. */
const directions = ["H", "V", "A"] as const;

const words: Readonly<Record<string, string>> = { horizontal: "H", vertical: "V", axial: "A" };

/** A point as a bearing and a direction; undefined where it names none. */
function directed(point: string): { bearing: string; mark: string; direction: string } | undefined {
  const [, bearing, mark, last] = /^(.*?[^\s_/.-])([\s_/.-]*)(horizontal|vertical|axial|[HVA])$/i.exec(point) ?? [];
  if (bearing === undefined || mark === undefined || last === undefined) return undefined;
  // a letter that ends a word is none: "shaft", "pump rv"
  if (mark === "" && !/\d$/.test(bearing)) return undefined;
  return { bearing, mark, direction: words[last.toLowerCase()] ?? last.toUpperCase() };
}

/** The end of a machine that a name ends with: `DE`, `motor NDE`, `drive end`; a number or a single letter stands alone. */
const END =
  /^(?:(?:.*[\s_/.-])?(?:N?DE|FE|[IO]B|(?:(?:non?|anti)[\s-]?)?driven?[\s-]end|free[\s-]end|inboard|outboard)|(?:bearing|brg|B)?[\s.#-]*[1-9]\d?|[DN])$/i;

/** A direction among the words of a name. */
const AMONG = /(?:^|[\s_/.-])(?:horizontal|vertical|axial|[HVA])(?=$|[\s_/.-])/i;

/**
 * The direction in which a point was read, where its name is an end of a machine and one direction; undefined otherwise: in
 * `FAN-A` or `P-101-A` the letter may be which of several machines it is.
 */
export function directionOf(point: string): Direction | undefined {
  const { bearing = "", direction: way } = directed(point.trim()) ?? {};
  if (!END.test(bearing) || AMONG.test(bearing)) return undefined;
  return (Object.keys(words) as Direction[]).find((one) => words[one] === way);
}

/** The directions in which points were read. */
export function directionsOf(points: readonly string[]): readonly string[] {
  return [...new Set(points.flatMap((point) => directed(point)?.direction ?? []))];
}

/**
 * The directions of bearings that were not read, of those bearings of which one was: `DE-A` where `DE-H` and `DE-V` are
 * given. A bearing of which nothing was read is not known of.
 */
export function unreadDirections(points: readonly string[]): readonly string[] {
  const bearings = new Map<string, { name: string; mark: string; read: Set<string> }>();
  for (const point of points) {
    const found = directed(point);
    if (found === undefined) continue;
    const { bearing, mark, direction } = found;
    const known = bearings.get(folded(bearing)) ?? { name: bearing, mark, read: new Set<string>() };
    known.read.add(direction);
    bearings.set(folded(bearing), known);
  }
  return [...bearings.values()].flatMap(({ name, mark, read }) => {
    // "boiler-feed pump A" alone is a machine and no axial reading
    if (/^\s+$/.test(mark) && read.size === 1 && read.has("A")) return [];
    return directions.filter((one) => !read.has(one)).map((one) => `${name}${mark}${one}`);
  });
}
