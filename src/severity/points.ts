import { requireText, shown, VeladisError, withParameters } from "../core/index";
import { type Amplitude, isReading, parseAmplitude, requireNoPlusMinus } from "../reading/index";
import { folded } from "./label";
import { holdsReading, isFactName, isHousedName, isNumbered } from "./point-name";

/** A reading and the point of the machine it was taken at. */
export interface PointReading {
  /** The point, e.g. `DE-H`: drive end, horizontal. */
  readonly point: string;
  readonly reading: Amplitude;
}

const FORM = 'points with their readings, such as "DE-H 3.1, DE-V 2.2, NDE-H 2.9 mm/s rms"';

/** Beyond any machine: as many points are told apart in one line. */
const MOST_POINTS = 100;

/** Beyond any list that a person writes; keeps junk from being searched. */
export const LONGEST_POINTS = 10_000;

/** A part of the text taken apart; without its own type it takes that of a part behind it. */
interface Part {
  readonly written: string;
  readonly point: string;
  readonly digits: string;
  readonly type: string;
}

function refuse(code: "syntax" | "missing-unit" | "not-a-number", expected: string, received: string): never {
  throw new VeladisError(code, { expected, received: shown(received) });
}

/**
 * Refuses more points than a machine has, and one that is named twice.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requireDistinct(points: readonly string[]): void {
  if (points.length > MOST_POINTS) {
    throw new VeladisError("out-of-range", {
      expected: `${MOST_POINTS} points or fewer`,
      received: `${points.length}`,
    });
  }
  const named = new Set<string>();
  for (const point of points) {
    const key = folded(point);
    if (named.has(key)) {
      throw new VeladisError("out-of-range", { expected: "each point once", received: `${shown(point)} twice` });
    }
    named.add(key);
  }
}

/** A number with a comma for decimals, which only a list parted by semicolons can have. */
function withPoint(digits: string, parted: string): string {
  if (parted !== ";" || !/^\d+,\d+$/.test(digits)) return digits;
  // 1,500 is fifteen hundred to one reader and one and a half to the next
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) refuse("not-a-number", "a number that is not read in two ways", digits);
  return digits.replace(",", ".");
}

/** Ends and directions that a point is named by. */
const PLACE = /(?:^|[\s-])(?:n?de|fe|od|id|free|drive|horizontal|vertical|axial|radial|[a-z])(?=$|[\s-])/i;

/**
 * Refuses a name that holds another reading, since a comma was left out: a number with decimals, a unit, a slash, a new
 * line, or a number between two places.
 */
function requireOneReading({ written, point }: Part): void {
  const [, before = "", behind = ""] = /^(.*?)[\s:=]\d[\d.,]*(?=\s)(.*)$/s.exec(point) ?? [];
  if (
    /[\r\n]|\d[.,]\d|\d\s*\//.test(point) ||
    isReading(`1 ${behind.trim().split(/\s+/).slice(0, 2).join(" ")}`) ||
    (PLACE.test(before) && PLACE.test(behind))
  ) {
    refuse("syntax", `a comma, or a semicolon, between points: ${FORM}`, written);
  }
}

/** Refuses a name that holds what belongs to a reading: the number behind it may be a limit, a range or another quantity. */
function requireName({ written, point }: Part): void {
  if (holdsReading(point)) {
    refuse(
      "syntax",
      `a name of a point, such as "DE-H", "bearing 3" or "P-101A DE-H", and one reading behind it: ${FORM}`,
      written,
    );
  }
}

/** Refuses a name that says where the readings of the machine were taken, beside no other. */
function requireNoFact({ written, point }: Part): void {
  if (!isFactName(point)) return;
  refuse(
    "syntax",
    `a name of a point, such as "DE-H"; that a reading was taken on the ${point} is a fact of the machine, and stands with it`,
    written,
  );
}

/**
 * Refuses what names no point of a machine, as {@link parsePoints} does: a name that holds another reading, or a unit, a sign,
 * a state or a fact of the machine, such as `DE clipped` or `housing`.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requirePointName(point: string): void {
  const part = { written: point, point, digits: "", type: "" };
  requireOneReading(part);
  requireName(part);
  requireNoFact(part);
}

/**
 * Refuses a point of the housing by its name, whose reading would be judged as one of the shaft.
 *
 * @param place - where the readings of the machine were taken, if that is known
 * @param measuredOn - where the limits that judge it are measured
 * @throws {@link VeladisError} `out-of-range`
 */
export function requirePlacedName(point: string, place: unknown, measuredOn: readonly string[]): void {
  if (!isHousedName(point)) return;
  if (place !== "shaft" && measuredOn.some((one) => !/^the (?:\w+ )?shaft\b/i.test(one))) return;
  throw new VeladisError("out-of-range", {
    expected:
      "a point of the shaft for limits of the shaft: a reading of the housing is judged by limits of the housing",
    received: shown(point),
    option: "point",
  });
}

/**
 * Refuses a whole number without a unit behind a name that may be numbered, where a reading follows: `ID fan 1, motor DE 4.1
 * mm/s rms` has one reading, or two.
 */
function requireOwnUnit({ written, point, digits, type }: Part): void {
  const isApart = /[:=]\s*$/.test(written.slice(0, written.length - digits.length));
  if (type !== "" || isApart || !/^\d{1,2}$/.test(digits) || !isNumbered(point)) return;
  refuse(
    "syntax",
    `a unit behind the number, or a colon before it, where ${digits} is the reading of ${point}; where ${point} ${digits} is a name, no comma behind it`,
    written,
  );
}

/** True for what says how an uncertainty is meant, which names no point: `k`, `2 sigma`, `95 %`. */
function isCoverage(name: string): boolean {
  return /^k$|[%\u03c3]|\bsigma\b/i.test(name) || name.endsWith(" k");
}

/** A part taken apart: a name may hold numbers (bearing 1 H), so the first that begins a reading, or ends the part, is it. */
function partOf(written: string, parted: string): Part {
  const numerals = [...written.matchAll(/(?<=^|[\s:=])\d[\d.,]*(?:e[+-]?\d+)?(?=\s|$)/gi)];
  const found = numerals.map((match): Part => {
    const point = written
      .slice(0, match.index)
      .replace(/[\s:=]+$/, "")
      .trim();
    const type = written.slice(match.index + match[0].length).trim();
    return { written, point, digits: withPoint(match[0], parted), type };
  });
  const part = found.find(({ digits, type }) => type === "" || isReading(`${digits} ${type}`)) ?? found[0];
  if (part === undefined) return refuse("syntax", FORM, written);
  if (isCoverage(part.point) || /\bk\s*=/i.test(written)) {
    refuse("syntax", "a coverage factor in brackets behind the ± that it is of, such as DE-H 3.1 ± 0.2 (k=2)", written);
  }
  if (part.point !== "") {
    requireOneReading(part);
    requireName(part);
    requireNoFact(part);
    requireOwnUnit(part);
    return part;
  }
  return refuse(
    "syntax",
    `a name before each reading (semicolons between points where numbers have a decimal comma): ${FORM}`,
    written,
  );
}

/**
 * The points of a machine and their readings, from one line.
 *
 * Points are parted by commas, or by semicolons, where numbers may have a decimal comma. A reading without a type takes
 * that of the next one that has it.
 *
 * @throws {@link VeladisError} `syntax` for a number without a name or the other way round, a name that holds a unit, a sign or a word of a reading, and for ±, `out-of-range` for a point
 *   named twice and for too many, `missing-unit` where no type follows, and all of {@link parseAmplitude}
 * @example
 * ```ts
 * import { parsePoints } from "veladis/severity";
 *
 * parsePoints("DE-H 3.1, DE-V 2.2 mm/s rms").map(({ point, reading }) => [point, reading.value, reading.unit]);
 * // => [["DE-H", 3.1, "mm/s"], ["DE-V", 2.2, "mm/s"]]
 * parsePoints("DE-H 3,1; DE-V 2,2 mm/s rms")[0]?.reading.value; // => 3.1
 * parsePoints("DE-H 3.1, DE-H 2.2 mm/s rms"); // throws out-of-range
 * ```
 */
export function parsePoints(text: string): readonly PointReading[] {
  return withParameters({ text }, () => {
    const written = requireText(text, FORM);
    if (written.length > LONGEST_POINTS) {
      refuse("syntax", `points with their readings in ${LONGEST_POINTS} characters or fewer`, written.slice(0, 200));
    }
    // its number would be taken for the reading
    requireNoPlusMinus(written);
    const parted = written.includes(";") ? ";" : ",";
    const pieces = written.split(parted).map((one) => one.trim());
    if (pieces.length > MOST_POINTS) requireDistinct(pieces);
    const parts = pieces.map((one) => partOf(one, parted));
    requireDistinct(parts.map(({ point }) => point));
    return Object.freeze(
      parts.map(({ written: piece, point, digits }, i) => {
        const type = parts.slice(i).find((one) => one.type !== "")?.type;
        if (type === undefined) refuse("missing-unit", `a unit and a detector behind the last reading: ${FORM}`, piece);
        return Object.freeze({ point, reading: parseAmplitude(`${digits} ${type}`) });
      }),
    );
  });
}
