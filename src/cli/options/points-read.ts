import { isSignal, JOINED_RANGE, type SignalSource, signalReading, wayOfSignal } from "../../amplitude/index";
import { uncertainPoints } from "../../conformity/index";
import { lazily, shown, splitNumeral, VeladisError } from "../../core/index";
import { hasPlusMinus, PLUS_MINUS } from "../../reading/index";
import { type PointReading, parsePoints } from "../../severity/index";

/** A point as it is written: its name, and the number and what stands behind it. */
interface Piece {
  readonly point: string;
  readonly digits: string;
  readonly behind: string;
}

/** A piece taken apart at its first number that begins a signal, else at the last number that stands alone. */
function pieceOf(written: string): Piece | undefined {
  const numbers = [...written.matchAll(/(?<=^|[\s:=])[+\u2212-]?\d[\d.]*(?:e[+-]?\d+)?(?=\s|$|[a-z%\u00b5\u03bc])/gi)];
  const found = numbers.find(({ index }) => isSignal(written.slice(index))) ?? numbers.at(-1);
  if (found === undefined) return undefined;
  const [digits, behind] = splitNumeral(written.slice(found.index).replace("\u2212", "-"));
  return {
    point: written
      .slice(0, found.index)
      .replace(/[\s:=]+$/, "")
      .trim(),
    digits,
    behind: behind.trim(),
  };
}

/** Per cent of an uncertainty, which is no signal. */
const percent = /* @__PURE__ */ lazily(
  () => new RegExp(String.raw`(?:${PLUS_MINUS.source})\s*[\d.,]+\s*(?:%|per ?cent)`, "gi"),
);

/** The pieces of points, one of which at least is a signal; undefined where none is. */
function signalPieces(text: string): readonly (Piece | undefined)[] | undefined {
  // per cent of an uncertainty, and of its coverage, which stands behind a comma without a name, are no signals
  const bare = text.replace(percent(), "");
  if (!/\d\s*(?:[um\u00b5\u03bc]?V|mA|%|per ?cent)(?![A-Za-z])/.test(bare)) return undefined;
  const pieces = bare
    .split(text.includes(";") ? ";" : ",")
    .map((one) => pieceOf(text.includes(";") ? one.trim().replace(/(\d),(?=\d)/g, "$1.") : one.trim()));
  return pieces.some((one) => one !== undefined && one.point !== "" && isSignal(`${one.digits} ${one.behind}`))
    ? pieces
    : undefined;
}

/** True where a text of points has a signal among their readings. */
export function hasSignalPoint(text: string): boolean {
  return signalPieces(text) !== undefined;
}

/** What turns the signals of a text of points into vibrations: a sensor, a loop, or both. */
export function waysOfPoints(text: string): readonly (keyof SignalSource)[] {
  return (signalPieces(text) ?? []).flatMap((one) => wayOfSignal(`1 ${one?.behind ?? ""}`) ?? []);
}

/**
 * The points of a machine and their readings, as {@link uncertainPoints} takes them, signals among them turned into vibrations:
 * `DE-H 98 mV pk by 100 mV/g at 80 Hz, DE-V 12 mA of 0 to 20 mm/s rms`.
 *
 * @throws {@link VeladisError} `syntax` for signals with ± and for pieces without a name or a number; as
 *   {@link uncertainPoints} and {@link signalReading}
 */
export function pointsRead(text: string, source: SignalSource = {}): readonly PointReading[] {
  const pieces = signalPieces(text);
  if (pieces === undefined) return uncertainPoints(text);
  if (hasPlusMinus(text)) {
    throw new VeladisError("syntax", {
      expected: "signals of points without ±; convert each by itself and state the uncertainty behind the answer",
      received: shown(text),
    });
  }
  const readings = pieces.map((piece, i): PointReading => {
    const typed = pieces.slice(i).find((one) => one !== undefined && one.behind !== "");
    if (piece === undefined || typed === undefined) {
      throw new VeladisError("syntax", {
        expected: 'points with a signal each, such as "DE-H 98 mV pk, DE-V 76 mV pk by 100 mV/g at 80 Hz"',
        received: shown(text),
      });
    }
    const { point, digits } = piece;
    const reading = `${digits} ${typed.behind}`;
    // names are held to the same rules as those of vibrations
    const [named] = parsePoints(`${point} ${isSignal(reading) ? "1 mm/s rms" : reading}`) as [PointReading];
    if (!isSignal(reading)) return named;
    try {
      return Object.freeze({
        point: named.point,
        reading: signalReading(reading.replace(JOINED_RANGE, " to "), source),
      });
    } catch (error) {
      if (!(error instanceof VeladisError)) throw error;
      const { expected, option } = error;
      const received = `${error.received}, of ${point}`;
      throw new VeladisError(error.code, { expected, received, ...(option !== undefined && { option }) });
    }
  });
  parsePoints(readings.map(({ point }) => `${point} 1 mm/s rms`).join(", "));
  return Object.freeze(readings);
}
