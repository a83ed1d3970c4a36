import { convert } from "../amplitude/index";
import { type ReadingType, typeOf } from "../reading/index";
import { tickText } from "./axis";
import { label, rounded, tag } from "./markup";
import { widthOf } from "./text-width";

/** Lines of equal displacement or acceleration. */
interface Family {
  readonly unit: string;
  readonly other: string;
  readonly quantity: "displacement" | "acceleration";
}

/** The diagonals of each system of units, with the unit that is given beside. */
// biome-ignore format: a row of a table is a line
export const families = /* @__PURE__ */ Object.freeze({
  metric: [{ unit: "um", other: "mil", quantity: "displacement" }, { unit: "m/s2", other: "g", quantity: "acceleration" }],
  imperial: [{ unit: "mil", other: "um", quantity: "displacement" }, { unit: "g", other: "m/s2", quantity: "acceleration" }],
} as const satisfies Record<string, readonly Family[]>);

/** The frame that diagonals are drawn in: places of frequencies and velocities, and its edges. */
export interface LogFrame {
  readonly x: (hertz: number) => number;
  readonly y: (velocity: number) => number;
  readonly frequency: readonly [low: number, high: number];
  readonly velocity: readonly [low: number, high: number];
  /** What velocities are written in. */
  readonly as: ReadingType;
  readonly decade: number;
}

type Convert = (value: number, from: ReadingType, to: ReadingType, options: { at: { hertz: number } }) => number;

/** The decade values of a family that cross the frame. */
function decades(least: number, most: number): number[] {
  const found: number[] = [];
  for (let power = Math.ceil(Math.log10(least)); 10 ** power <= most; power++) found.push(Number(`1e${power}`));
  return found;
}

/** A place that words must keep clear of. */
export type Obstacle = readonly [x: number, y: number];

/** Half the height of words and what must stay free around them. */
const CLEAR = 13;

/** The places that words beginning at a point and running in a direction cover. */
function covered([x, y]: Obstacle, [dx, dy]: Obstacle, long: number): Obstacle[] {
  return Array.from({ length: Math.ceil(long / 9) + 1 }, (_, i) => [x + dx * i * 9, y + dy * i * 9] as const);
}

/**
 * Where words along a line from one end to the other can stand: the first place from the line's preferred end that
 * keeps clear of the edges and of all that stands already.
 */
function freePlace(from: Obstacle, to: Obstacle, long: number, taken: readonly Obstacle[]): Obstacle[] | undefined {
  const whole = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const direction = [(to[0] - from[0]) / whole, (to[1] - from[1]) / whole] as const;
  for (let start = 12; start + long + 12 <= whole; start += 8) {
    const begin = [from[0] + direction[0] * start, from[1] + direction[1] * start] as const;
    const places = covered(begin, direction, long);
    if (places.every(([x, y]) => taken.every(([a, b]) => Math.hypot(x - a, y - b) >= CLEAR))) return places;
  }
  return undefined;
}

/** The lines of a family, each with its value where it has room. */
function lines({ unit, other, quantity }: Family, detector: string, frame: LogFrame, taken: Obstacle[]): string {
  const { x, y, frequency, velocity, as, decade } = frame;
  const rising = quantity === "displacement";
  const { type } = typeOf(unit, detector);
  const at = (value: number, hertz: number): number => (convert as Convert)(value, type, as, { at: { hertz } });
  const back = (value: number, hertz: number): number => (convert as Convert)(value, as, type, { at: { hertz } });
  const [f0, f1] = frequency;
  const [v0, v1] = velocity;
  const [least, most] = rising ? [back(v0, f1), back(v1, f0)] : [back(v0, f0), back(v1, f1)];
  // The frequency at which the line of a value has a velocity, held within the frame.
  const meets = (value: number, v: number): number => {
    const f = rising ? (f0 * v) / at(value, f0) : (f0 * at(value, f0)) / v;
    return Math.min(Math.max(f, f0), f1);
  };
  const placeAt = (value: number, f: number): Obstacle => [x(f), y(at(value, f))];
  return decades(least, most)
    .map((value) => {
      const ends = [meets(value, v0), meets(value, v1)].sort((a, b) => a - b) as [number, number];
      const [left, right] = [placeAt(value, ends[0]), placeAt(value, ends[1])];
      const d = `M${[left, right].map((place) => place.map(rounded).join(",")).join("L")}`;
      const line = tag("path", { kind: rising ? "rise" : "fall", d });
      const also = (convert as Convert)(value, type, typeOf(other, detector).type, { at: { hertz: 1 } });
      const beside = decade > 130 ? ` (${tickText(Number(also.toPrecision(3)))} ${other})` : "";
      const text = `${tickText(value)} ${unit}${beside}`;
      const long = widthOf(text, 10.5);
      const [begin, end] = rising ? [right, left] : [left, right];
      const places = freePlace(begin, end, long, taken);
      if (places === undefined) return line;
      taken.push(...places);
      const [px, py] = (rising ? places.at(-1) : places[0]) as Obstacle;
      const turn = (Math.atan2(right[1] - left[1], right[0] - left[0]) * 180) / Math.PI;
      return (
        line +
        label(0, -4, text, {
          kind: ["diagonal", "halo"],
          transform: `translate(${rounded(px)},${rounded(py)}) rotate(${rounded(turn)})`,
        })
      );
    })
    .join("");
}

/** Both families of diagonals of a system of units; their words keep clear of the obstacles. */
export function diagonals(
  system: keyof typeof families,
  detector: string,
  frame: LogFrame,
  obstacles: readonly Obstacle[],
): string {
  const taken = [...obstacles];
  return families[system].map((family) => lines(family, detector, frame, taken)).join("");
}
