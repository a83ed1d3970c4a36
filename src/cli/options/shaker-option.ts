import { shown, VeladisError } from "../../core/index";
import { frequency, hertz as hertzOf } from "../../frequency/index";
import { hasPlusMinus, isReading } from "../../reading/index";
import { type Shaker, shakerReach } from "../../verification/index";
import { ends } from "./option-values";

/** Frequencies of a shaker, and its level where it has one alone. */
export interface ShakerOptions extends Pick<Shaker, "lowest" | "highest"> {
  readonly level?: string;
}

const expected =
  '--shaker such as "8 Hz to 3 kHz", its frequencies; "159.2 Hz" for one, "10 mm/s rms at 159.2 Hz" for one level';

const LEVEL_ALONE =
  '--shaker with its level alone; how well it is known goes into --uncertainty "3 % (k=2)", or in check into --known "10 ± 0.3 mm/s rms (k=2)"';

/**
 * The shaker of `"8 Hz to 3 kHz"`, of `"159.2 Hz"`, or of `"10 mm/s rms at 159.2 Hz"`.
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
  const [lowest, highest] = /\s+to\s+/.test(range) ? ends(range, expected) : [range, range];
  return {
    lowest: frequency(lowest),
    highest: frequency(highest),
    ...(level !== undefined && { level }),
  };
}

/**
 * The known level of a check: as it was told, with the frequency of a shaker that has one; else the level of the shaker.
 *
 * @throws {@link VeladisError} `missing-option` for a level that neither tells, `out-of-range` for one that the shaker
 *   cannot give
 */
export function knownOfShaker(known: string | undefined, { lowest, highest, level }: ShakerOptions): string {
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
  const told = isOne && !/\sat\s/.test(wanted) ? `${wanted} at ${hertz} Hz` : wanted;
  const { possible, limitedBy } = shakerReach(told, { lowest, highest, ...(level !== undefined && { level }) }, "0 kg");
  if (possible) return told;
  throw new VeladisError("out-of-range", {
    expected: "a known level that the shaker gives",
    received: `${shown(told)}: not its ${limitedBy.join(" nor its ")}`,
  });
}
