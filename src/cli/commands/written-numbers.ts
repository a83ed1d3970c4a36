import { plainNumerals, pointedWords } from "../../core/index";
import type { ParsedOptions } from "../options/option-row";
import { signalSource } from "../options/signal-options";
import type { judgePage } from "./judge-page";

/** The options of `judge` that hold numbers, and the reader of a reading, with points for decimals. */
export function writtenNumbers({
  "decimal-comma": decimalComma,
  "crest-factor": crest,
  ...values
}: ParsedOptions<typeof judgePage.options>["values"]) {
  const readingIn = (text: string): string => (decimalComma ? plainNumerals(text, { decimal: "," }) : text);
  const told = (text: string | undefined): string | undefined => (text === undefined ? undefined : readingIn(text));
  return {
    machine: pointedWords(values.machine, decimalComma),
    since: told(values.since),
    uncertainty: told(values.uncertainty),
    background: told(values.background),
    crest: told(crest),
    source: signalSource({ sensor: told(values.sensor), loop: told(values.loop) }),
    readingIn,
  };
}
