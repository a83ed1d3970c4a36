import { lazily, shown, VeladisError } from "../../core/index";
import { frequency } from "../../frequency/index";

/** A reading, and what was noted of the machine when it was taken. */
export interface ReadAtState {
  readonly reading: string;
  /** Its running speed, which need not be the frequency of the vibration. */
  readonly speed?: string;
  readonly load?: string;
}

/** What may follow: the end, another part, or the word before a target. */
const END = String.raw`(?=\s*(?:$|[,;]|\sto\s))`;

const LOAD = /* @__PURE__ */ lazily(
  () =>
    new RegExp(
      String.raw`\s*[,;]?\s*\(?\s*(?:(?:at\s+)?(?:load\s*[=:]?\s*(?:of\s+)?(\d+(?:\.\d+)?\s*(?:%|per ?cent|[kM]W))|((?<![\d.])\d+(?:\.\d+)?\s*(?:%|per ?cent|[kM]W)|full|no|part|half|rated)[\s-]+(?:of\s+(?:full\s+|rated\s+)?)?load))\s*\)?${END}`,
      "gi",
    ),
);

const SPEED = /* @__PURE__ */ lazily(
  () =>
    new RegExp(
      String.raw`\s*[,;]?\s*\(?\s*(?:running\s+at|(?:running\s+)?speed\s*[=:]?)\s*(\d+(?:\.\d+)?(?:\s*[^\s,;()]+)?)\s*\)?${END}`,
      "gi",
    ),
);

/** One sign for a run of white space: a line end where it has one. */
function shortened(run: string): string {
  return run.includes("\n") ? "\n" : " ";
}

/** What a pattern finds once at the most, and the text without it. */
function taken(text: string, pattern: RegExp, what: string): [rest: string, found: string | undefined] {
  const all = [...text.matchAll(pattern)];
  if (all.length > 1) {
    throw new VeladisError("syntax", { expected: `one ${what} at a reading`, received: shown(text) });
  }
  const [one] = all;
  if (one === undefined) return [text, undefined];
  const found = (one[1] ?? one[2] ?? "").trim().replace(/\s+/g, " ");
  return [`${text.slice(0, one.index)}${text.slice(one.index + one[0].length)}`, found];
}

/**
 * A reading apart from the load and the running speed that stand behind it: `4.1 mm/s rms, speed 1485 r/min, load 80 %`.
 *
 * @param unit - the unit of a bare number of the speed
 * @throws {@link VeladisError} `syntax` for two of one, and as {@link frequency}
 */
export function readAtState(text: string, unit: string | undefined): ReadAtState {
  // the patterns look for room at many places: a long run of it is none the more
  const [unloaded, load] = taken(text.replace(/\s{2,}/g, shortened), LOAD(), "load");
  const [reading, said] = taken(unloaded, SPEED(), "running speed");
  const isBare = said !== undefined && /^\d+(?:\.\d+)?$/.test(said);
  const speed = isBare && unit !== undefined ? `${said} ${unit}` : said;
  if (isBare && unit === undefined) {
    throw new VeladisError("missing-unit", {
      expected: `a unit behind the running speed, such as "${said} r/min", or --speed-unit for bare numbers`,
      received: shown(`speed ${said}`),
      option: "speed-unit",
    });
  }
  if (speed !== undefined) frequency(speed);
  return { reading: reading.trim(), ...(speed !== undefined && { speed }), ...(load !== undefined && { load }) };
}

/** The same in words, for behind an answer that neither of them changes. */
export function stateNotes({ speed, load }: Omit<ReadAtState, "reading">): string[] {
  return [
    ...(speed === undefined ? [] : [`running speed ${speed}: not taken as the frequency`]),
    ...(load === undefined ? [] : [`load ${load}`]),
  ];
}
