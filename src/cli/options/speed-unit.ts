import { shown, VeladisError } from "../../core/index";
import { frequencyUnitSymbol } from "../../frequency/index";
import type { OptionRow } from "./option-row";

/** The option that says the unit of a bare number behind `at`. */
export const speedUnit = {
  argument: "<unit>",
  help: "unit of a bare number behind at, e.g. of 4.1 mm/s rms at 2980; without it such a number is refused",
  example: "r/min",
  list: "frequency units",
} as const satisfies OptionRow;

/** A number behind `at`, or an order and a number, with no unit behind it. */
const BARE =
  /((?:\s|^)at\s+|@\s*)((?:\d+(?:\.\d+)?\s*[x\u00d7]\s*(?:of\s+)?)?\d+(?:\.\d+)?)(?=\s*(?:$|[,;)]|\sto\s|\swith\s))/gi;

/** The same of a running speed that is noted beside a reading. */
const BARE_RUNNING = /(?:running\s+at|speed\s*[=:]?)\s*\d+(?:\.\d+)?\s*(?:$|[,;)]|\sto\s)/i;

/** Whether a text has a number behind `at`, or of a running speed, that says no unit. */
function hasBareSpeed(text: string): boolean {
  return text.search(BARE) >= 0 || BARE_RUNNING.test(text);
}

/** A frequency that an option tells, with the unit that is told for bare numbers. */
export function frequencyTold(at: string | undefined, unit: string | undefined): string | undefined {
  return at === undefined ? undefined : withSpeedUnit(`at ${at}`, unit).slice("at ".length);
}

/**
 * A reading with the unit that is told behind a bare number of its speed.
 *
 * @throws {@link VeladisError} `missing-unit` for a bare number whose unit is not told
 */
export function withSpeedUnit(text: string, unit: string | undefined): string {
  const symbol = unit === undefined ? undefined : frequencyUnitSymbol(unit);
  return text.replace(BARE, (all, at: string, number: string) => {
    if (symbol !== undefined) return `${at}${number} ${symbol}`;
    throw new VeladisError("missing-unit", {
      expected: `a unit behind the speed or frequency, such as "${number} r/min" or "${number} Hz", or --speed-unit for bare numbers`,
      received: shown(all.trim()),
      option: "speed-unit",
    });
  });
}

/**
 * Refuses a unit of bare speeds beside readings none of which has one, since it would play no part.
 *
 * @throws {@link VeladisError} `unknown-option`
 */
export function requireBareSpeed(unit: string | undefined, ...written: readonly (string | undefined)[]): void {
  if (unit === undefined) return;
  frequencyUnitSymbol(unit);
  const told = written.flatMap((text) => (text === undefined ? [] : [text]));
  if (told.some(hasBareSpeed)) return;
  throw new VeladisError("unknown-option", {
    expected: "a reading with a bare number behind at, such as 4.1 mm/s rms at 2980, for --speed-unit",
    received: told.map(shown).join(" and "),
    option: "speed-unit",
  });
}
