import { shown, VeladisError } from "../../core/index";
import { type Frequency, frequency, hertz as hertzOf } from "../../frequency/index";
import { type Amplitude, format, hasPlusMinus, isReading } from "../../reading/index";
import { type Shaker, shakerReach } from "../../verification/index";
import { ends } from "./option-values";

/** Frequencies of a shaker, and its level where it has one alone. */
export interface ShakerOptions extends Pick<Shaker, "lowest" | "highest" | "frequencies"> {
  readonly level?: string;
}

const expected =
  '--shaker such as "8 Hz to 3 kHz", its frequencies; "159.2 Hz" for one, "40 Hz, 80 Hz" for fixed ones, "10 mm/s rms at 159.2 Hz" for one level';

const LEVEL_ALONE =
  '--shaker with its level alone; how well it is known goes into --uncertainty "3 % (k=2)", or in check into --known "10 ± 0.3 mm/s rms (k=2)"';

/** Frequencies in a range, or one, or fixed ones, each with its unit, so that a decimal comma is refused. */
function frequenciesOf(range: string): Pick<Shaker, "lowest" | "highest" | "frequencies"> {
  if (/\s+to\s+/.test(range)) {
    const [lowest, highest] = ends(range, expected);
    return { lowest: frequency(lowest), highest: frequency(highest) };
  }
  const all = range.split(",").map((one) => frequency(one.trim()));
  const frequencies = all.sort((a, b) => hertzOf(a) - hertzOf(b));
  const [lowest, highest] = [frequencies[0] as Frequency, frequencies.at(-1) as Frequency];
  return { lowest, highest, ...(frequencies.length > 1 && { frequencies }) };
}

/**
 * The shaker of `"8 Hz to 3 kHz"`, of `"159.2 Hz"`, of `"40 Hz, 80 Hz"`, or of `"10 mm/s rms at 159.2 Hz"`.
 *
 * @throws {@link VeladisError} `syntax` for other words, `missing-frequency` for a level without its frequency
 */
export function shakerOption(written: string): ShakerOptions {
  const [, level, range = written] = /^(.*\S)\s+at\s+(.+)$/.exec(written.trim()) ?? [];
  if (level === undefined && isReading(range)) {
    throw new VeladisError("missing-frequency", { expected, received: shown(written) });
  }
  if (level !== undefined && hasPlusMinus(level)) {
    throw new VeladisError("syntax", { expected: LEVEL_ALONE, received: shown(written) });
  }
  if (level !== undefined && !isReading(level))
    throw new VeladisError("syntax", { expected, received: shown(written) });
  return {
    ...frequenciesOf(range),
    ...(level !== undefined && { level }),
  };
}

/** A level at a frequency, unless it has one of its own. */
function atHertz(level: string | Amplitude, hertz: number): string | Amplitude {
  if (typeof level === "string") return /\sat\s/.test(level) ? level : `${level} at ${hertz} Hz`;
  return level.hertz === undefined ? { ...level, hertz } : level;
}

/**
 * The known level of a check: as it was told, with the frequency of a shaker that has one; else the level of the shaker.
 *
 * @throws {@link VeladisError} `missing-option` for a level that neither tells, `out-of-range` for one that the shaker
 *   cannot give
 */
export function knownOfShaker(known: string | Amplitude | undefined, shaker: ShakerOptions): string | Amplitude {
  const { lowest, highest, level } = shaker;
  const hertz = hertzOf(lowest);
  const isOne = hertz === hertzOf(highest);
  const wanted = known ?? level;
  if (wanted === undefined || (!isOne && known === undefined)) {
    throw new VeladisError("missing-option", {
      expected:
        'the level that the shaker gave, as in --known "8 mm/s rms", or --shaker "10 mm/s rms at 159.2 Hz" for one level',
      received: "nothing",
    });
  }
  const told = isOne ? atHertz(wanted, hertz) : wanted;
  const { possible, limitedBy } = shakerReach(told, shaker, "0 kg");
  if (possible) return told;
  throw new VeladisError("out-of-range", {
    expected: "a known level that the shaker gives",
    received: `${shown(typeof told === "string" ? told : format(told))}: not its ${limitedBy.join(" nor its ")}`,
  });
}
