import { type ConvertOptions, convertAmplitude, currentLoop, linearTypeOf } from "../amplitude/index";
import { finiteResult } from "../core/index";
import { type Amplitude, format, significant } from "../reading/index";

/** The least share of the span of its loop that a trip should lie at: common practice, no source. */
const LEAST = 0.3333333333333333;

/** Where a level lies in the range of a loop. */
interface LoopUse {
  /** Its share of the span: 0 at 4 mA, 1 at 20 mA; beyond both where the loop does not carry it. */
  readonly share: number;
  /** What is to be known of a trip there; null for one between a third of the span and its end. */
  readonly remark: string | null;
}

/**
 * What a loop makes of a trip: under a third of the span most of its resolution goes to levels that nobody waits for, and
 * an error that is a share of the span is a large share of the trip; beyond the range it never acts.
 *
 * The third is common practice, without a source.
 *
 * @param trip - in another quantity than the range with its frequency, or with one in the options
 * @param range - of the 4-20 mA loop, e.g. `"0 to 25.4 mm/s rms"`
 * @throws {@link VeladisError} as {@link currentLoop} and {@link convertAmplitude}
 */
export function loopUse(trip: string | Amplitude, range: string, options?: ConvertOptions): LoopUse {
  const loop = currentLoop(range);
  const [start, end] = [loop.reading(4), loop.reading(20)];
  const { value } = convertAmplitude(trip, linearTypeOf(start), options);
  const span = end.value - start.value;
  const share = finiteResult((value - start.value) / span);
  const of = `of the span ${range}`;
  if (share > 1 || share <= 0) {
    const where = share > 1 ? "above the end" : "at or below the start";
    return { share, remark: `the trip lies ${where} ${of}: the loop does not carry it` };
  }
  if (share >= LEAST - 1e-9) return { share, remark: null };
  const better = format({ ...end, value: start.value + 2 * (value - start.value) }, { digits: 2 });
  return {
    share,
    remark: `the trip lies at ${significant(100 * share, 2)} % ${of}, under a third, which wastes resolution: 1 % of the span is ${significant(finiteResult(1 / share), 2)} % of the trip; a range that ends near ${better} has it at half (common practice, no source)`,
  };
}
