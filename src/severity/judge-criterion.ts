import { type ConvertedAmplitude, convertChecked } from "../amplitude/index";
import { isVerified, type Provenance, type Source } from "../core/index";
import { type Amplitude, type Assumption, type Step, type Unfinished, withStep } from "../reading/index";
import type { Quantity } from "../units/index";
import type { Bound } from "./applicable-criteria";
import { carriedAsBound } from "./carried-as-bound";
import type { CriterionPlan } from "./criterion-plan";
import type { SchemeKind, Zone } from "./kinds";
import type { Limit } from "./limit";
import type { PeakMeaning } from "./scheme";

/** How far a reading is from a limit; above 1 and 0 dB while the reading is below it. */
export interface Margin {
  /** Limit over reading; infinite for a reading of zero or next to it, which JSON writes as null. */
  readonly ratio: number;
  /** `20 lg` of it, infinite with it. */
  readonly decibels: number;
}

/** What one criterion says of a reading. */
export interface CriterionJudgement<K extends SchemeKind = SchemeKind> {
  readonly quantity: Quantity;
  readonly zone: Zone<K>;
  /** The zones that the limits part, best first. */
  readonly zones: readonly Zone<K>[];
  /** The reading in the unit and detector of the standard. */
  readonly judged: ConvertedAmplitude;
  /** All limits by name, lowest first, in the reader's unit and detector. */
  readonly limits: Readonly<Record<string, Limit<K>>>;
  /** The limit that ends the zone upwards; in the worst zone, the last one exceeded. */
  readonly limit: Limit<K>;
  readonly margin: Margin;
  readonly source: Source;
  /**
   * `exact`, or for a reading of another quantity without a frequency: `least` or `most` that the vibration can be in
   * this quantity while nothing of it lies below running speed.
   */
  readonly bound: Bound;
  /** The measuring band that the standard asks for, in hertz; null where it is not known. */
  readonly band: readonly [low: number, high: number] | null;
  /** Which peak the limits mean, where they are in peak. */
  readonly peakMeans?: PeakMeaning;
  /** All that was assumed of the reading, on its way here and in the conversion to the unit of the standard. */
  readonly assumed: readonly Assumption[];
  /** How the least known of its limits is known. */
  readonly provenance: Provenance;
  readonly verified: boolean;
  /** The steps that led here, the last one from the judged reading to `margin.ratio`; see `explain` of `veladis`. */
  readonly history: readonly Step[];
}

/** The reading of a measurement that a criterion is planned for, judged by it; the readings have passed their checks. */
export function judgedBy(
  plan: CriterionPlan,
  readings: readonly Amplitude[],
  crestFactor: number | undefined,
): CriterionJudgement {
  const { criterion, bound, hertz, place, limits, bounds, texts, zones, band, provenance } = plan;
  const reading = readings[place] as Amplitude;
  const crest = crestFactor ?? plan.crestFactor;
  const judged =
    hertz !== undefined ? carriedAsBound(reading, criterion.as, hertz) : convertChecked(reading, criterion.as, crest);
  const { value, assumed, quantity } = judged;
  let above = 0;
  for (const most of bounds) if (value > most) above++;
  const at = Math.min(above, bounds.length - 1);
  const by = (limits[at] as Limit).value;
  const ratio = by / value;
  const mine = plan.readerLimits(reading, crestFactor);
  const limit = mine.all[at] as Limit;
  const judgement: Unfinished<CriterionJudgement> = {
    quantity,
    zone: zones[above] as Zone,
    zones,
    judged,
    limits: mine.byName,
    limit,
    margin: Object.freeze({ ratio, decibels: 20 * Math.log10(ratio) }),
    source: limit.source,
    bound,
    band,
    assumed,
    provenance,
    verified: isVerified(provenance),
    history: withStep(judged.history as readonly Step[], {
      does: "compare",
      value: ratio,
      type: "",
      by,
      note: texts[at] as string,
    }),
  };
  if (plan.peakMeans !== undefined) judgement.peakMeans = plan.peakMeans;
  return Object.freeze(judgement);
}

/** How bad a judgement is: by zone first, then by the share of the limit that is used up. */
export function rankOf({ zone, zones, margin }: CriterionJudgement): number {
  return zones.indexOf(zone) + 1 / (1 + margin.ratio);
}
