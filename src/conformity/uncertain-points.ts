import { shown, splitNumeral, VeladisError } from "../core/index";
import { hasPlusMinus, PLUS_MINUS } from "../reading/index";
import { LONGEST_POINTS, type PointReading, parsePoints } from "../severity/index";
import {
  bracketedCoverage,
  hasCoverage,
  requireOneSided,
  type Stated,
  sharedUnit,
  statedAlone,
  withStated,
} from "../uncertainty/index";

const FORM = 'points with their readings, such as "DE-H 3.1 ± 0.2 (k=2), DE-V 2.2 ± 5 % (k=2) mm/s rms"';

/** A point as it is written, without its uncertainty, and that. */
interface Piece {
  readonly plain: string;
  readonly stated: Stated | undefined;
  /** True where the ± stands behind a unit, which may be that of points before it too. */
  readonly isBehindUnit?: boolean;
}

/** What stands before a frequency, and the frequency with what is behind it. */
function beforeFrequency(piece: string): [subject: string, at: string] {
  const at = piece.search(/\sat\s|@/i);
  return at < 0 ? [piece, ""] : [piece.slice(0, at), piece.slice(at)];
}

/** The point `DE-H 3.1 ± 0.2 (k=2) mm/s rms` as `DE-H 3.1 mm/s rms` and `± 0.2 (k=2)`. */
function pieceOf(written: string, parted: string): Piece {
  const [subject, at] = beforeFrequency(written);
  if (at.search(PLUS_MINUS) >= 0) {
    throw new VeladisError("syntax", {
      expected: "points whose frequencies have no ±; judge one such reading by itself",
      received: shown(written),
    });
  }
  const [before = "", behind, ...more] = subject.split(PLUS_MINUS);
  if (hasCoverage(at) || (behind === undefined && hasCoverage(subject))) {
    throw new VeladisError("syntax", {
      expected: `a coverage factor behind the ± that it is of: ${FORM}`,
      received: shown(written),
    });
  }
  if (behind === undefined) return { plain: written, stated: undefined };
  if (more.length > 0) throw new VeladisError("syntax", { expected: FORM, received: shown(written) });
  const stated = statedAlone(parted === ";" ? behind.replace(/(\d),(\d)/, "$1.$2") : behind);
  const [, name = "", digits] = /^(.*?)((?<![\w.,])[\d.,]+(?:e[+-]?\d+)?)\s*$/is.exec(before) ?? [];
  if (digits === undefined || splitNumeral(digits)[1] !== "")
    return { plain: `${before.trimEnd()}${at}`, stated, isBehindUnit: true };
  const [plain, own] = sharedUnit(digits, stated);
  return { plain: `${name}${plain.trimEnd()}${at}`, stated: own };
}

/**
 * Points and their readings from one line, as {@link parsePoints} takes them, with the uncertainties behind the numbers or
 * the readings, as {@link parseUncertain} takes them.
 *
 * @throws {@link VeladisError} `syntax` where one has its coverage factor and another has none, and for a frequency with ±;
 *   and as those two
 */
export function uncertainPoints(text: string): readonly PointReading[] {
  // what is too long is refused before anything is looked for
  if (typeof text !== "string" || text.length > LONGEST_POINTS) return parsePoints(text);
  requireOneSided(text);
  if (!hasPlusMinus(text) && !hasCoverage(text)) return parsePoints(text);
  // a factor behind a comma is that of the reading before it, and no point
  const bracketed = bracketedCoverage(text);
  const parted = bracketed.replace(/\([^()]*\)/g, "").includes(";") ? ";" : ",";
  const pieces = bracketed.split(new RegExp(`${parted}(?![^()]*\\))`)).map((one) => pieceOf(one, parted));
  const covered = pieces.flatMap(({ stated }) => (stated === undefined ? [] : [stated.coverage !== undefined]));
  if (covered.includes(true) && covered.includes(false)) {
    throw new VeladisError("syntax", {
      expected: `the coverage factor behind each ±, or behind none: ${FORM}`,
      received: shown(text),
    });
  }
  const [alone, ...others] = pieces.filter(({ stated }) => stated !== undefined);
  const shared = pieces.findIndex(({ isBehindUnit }) => isBehindUnit);
  // DE-H 5.0, DE-V 2.9 mm/s rms ± 5 %: is it that of both?
  if (alone?.isBehindUnit && others.length === 0 && pieces.slice(0, shared).some(({ plain }) => /\d\s*$/.test(plain))) {
    throw new VeladisError("syntax", {
      expected: `a ± behind the number of each point that has one, since one behind the shared unit may be that of all: ${FORM}`,
      received: shown(text),
    });
  }
  const points = parsePoints(pieces.map(({ plain }) => plain).join(parted));
  return Object.freeze(
    points.map((one, i) => {
      const stated = pieces[i]?.stated;
      return stated === undefined ? one : Object.freeze({ ...one, reading: withStated(one.reading, stated) });
    }),
  );
}
