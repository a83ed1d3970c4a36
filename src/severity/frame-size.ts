import { folded } from "./label";
import type { Machine } from "./machine";
import { unitAt } from "./machine-units";

/** Shaft heights of IEC 60072-1 in mm: the number in a frame size such as 280M (from memory). */
const iecHeights = [
  56, 63, 71, 80, 90, 100, 112, 132, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900,
  1000,
];

/** First two digits of frames by NEMA MG 1, which are four times the shaft height in inches (from memory). */
const nemaQuarters = [14, 16, 18, 20, 21, 22, 25, 28, 32, 36, 40, 44, 50, 58, 68];

/** Two-digit frames by NEMA MG 1 are sixteen times the shaft height in inches (from memory). */
const nemaSixteenths = [42, 48, 56, 66];

function iec(digits: string): Machine {
  return { shaftHeight: `${Number(digits)} mm`, frame: "IEC" };
}

function nema(digits: string): Machine | undefined {
  const number = Number(digits);
  if (nemaSixteenths.includes(number)) return { shaftHeight: `${number / 16} in`, frame: "NEMA" };
  const quarters = Number(digits.slice(0, 2));
  if (digits.length < 3 || !nemaQuarters.includes(quarters) || /^..0$/.test(digits)) return undefined;
  return { shaftHeight: `${quarters / 4} in`, frame: "NEMA" };
}

/** The frame of a number and its letters; `system` is what was stated besides. */
function frameOf(digits: string, letters: string, system: string): Machine | undefined {
  const isIec = /^(?:[SL]|M|SM|ML)[A-DX]{0,2}$/i.test(letters);
  const isNema = /^(?:T[A-Z]{0,2}|U[A-Z]?)$/i.test(letters);
  if (system === "nema") return letters === "" || isNema ? nema(digits) : undefined;
  if (system === "iec") return letters === "" || isIec ? iec(digits) : undefined;
  if (isNema) return nema(digits);
  const standard = iecHeights.includes(Number(digits));
  if (isIec) return standard || system === "frame" ? iec(digits) : undefined;
  if (letters !== "" || system === "") return undefined;
  return standard ? iec(digits) : nema(digits);
}

/**
 * The shaft height and the system of frames that a frame size at the beginning of a text says: `280M`, `frame 280S`,
 * `IEC 280M`, `H 280`, `445T`, `NEMA 324TS`. A number alone counts only behind such a word.
 */
export function frameAt(text: string): { facts: Machine; length: number } | undefined {
  const said =
    /^(?:(iec|nema)[\s:=-]+)?(frame[\s-]+size|frame|size|shaft[\s-]+height|H(?=[\s:=\d]))?[\s:=]*(\d{2,4})([a-z]{0,4})(?![\w./'’-]|,\d)/i.exec(
      text,
    );
  if (said === null) return undefined;
  const [whole, standard = "", word = "", digits = "", letters = ""] = said;
  const named = folded(word);
  if (named === "size" && standard === "") return undefined;
  // frame 280 mm, H 11 in: the unit says it
  if (/^(?:mm|cm|in|ft)$/i.test(letters) || (letters === "" && unitAt(text.slice(whole.length).trimStart())))
    return undefined;
  const system =
    standard !== ""
      ? standard.toLowerCase()
      : named === "h" || named === "shaftheight"
        ? "iec"
        : named === ""
          ? ""
          : "frame";
  const facts = frameOf(digits, letters, system);
  return facts && { facts, length: whole.length };
}

/**
 * The same with a space before the letters, in capitals: `280 M`. A plate of an electrical machine has its frame so; 80 M
 * of a pump may be metres.
 */
export function spacedFrameAt(text: string): { facts: Machine; length: number } | undefined {
  const [whole = "", digits = "", letters = ""] =
    /^(\d{2,4})[ \u00a0]+((?:S|M|L|SM|ML)[A-DX]{0,2})(?![\w./'’-])/.exec(text) ?? [];
  const facts = frameOf(digits, letters, "");
  return facts && { facts, length: whole.length };
}
