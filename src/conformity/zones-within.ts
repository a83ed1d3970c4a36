import { requireChoice, requireKnownOptions, withParameters } from "../core/index";
import { type Assumption, type Step, union } from "../reading/index";
import {
  BEST_VALUE,
  headlineOf,
  type Judgement,
  NOT_RELIABLE,
  type SchemeKind,
  type Verdict,
  WORSE_PLACE,
  type Zone,
  zoneLevel,
} from "../severity/index";
import type { UncertaintyOf, UncertaintyOptions } from "../uncertainty/index";
import type { CriterionWithin, IntervalWithin } from "./criterion-within";
import { isOpen } from "./is-open";
import { uncertainVerdict } from "./judgement-shape";
import { type JudgementWithin, judgementWithin } from "./judgement-within";
import { type ZoneProbabilities, zoneProbabilities } from "./zone-probabilities";
import { type ZoneRule, zoneRules } from "./zone-rules";

/** How the zone of a reading with an uncertainty is decided. */
export interface ZonesWithinOptions extends Pick<UncertaintyOptions, "draws" | "seed"> {
  /** `"guard band"` if not given. */
  readonly rule?: ZoneRule;
}

const keys: Readonly<Record<keyof ZonesWithinOptions, true>> = /* @__PURE__ */ Object.freeze({
  rule: true,
  draws: true,
  seed: true,
});

/** The zones of a reading within its uncertainty, and the one that a rule decides on. */
export interface ZonesWithin {
  readonly kind: SchemeKind;
  readonly rule: ZoneRule;
  /** The zone by the rule. */
  readonly zone: Zone;
  /** The verdict by the rule: one zone, or a range where facts or criteria are open besides. */
  readonly headline: string;
  /** What the zone means, in words; where more than one is possible, why. */
  readonly word: string;
  /** All zones that the interval touches by any criterion of any scheme, and those possible for the best value; best first. */
  readonly zones: readonly Zone[];
  /** The worst of them. */
  readonly worst: Zone;
  /** What the verdict without the uncertainty says. */
  readonly bestValue: { readonly zone: Zone; readonly headline: string };
  /** How well the reading is known in the unit and detector of the standard, by the criterion that governs. */
  readonly uncertainty: UncertaintyOf;
  /** The same in what the reader wrote: value, and the ends between which it lies (k = 2). */
  readonly interval: IntervalWithin;
  /** Every criterion of every scheme, with its own interval. */
  readonly criteria: readonly CriterionWithin[];
  /** How likely each zone is; null where a number would be false precision. */
  readonly probabilities: ZoneProbabilities | null;
  /** Why there are no probabilities, in words; null where there are. */
  readonly why: string | null;
  readonly assumed: readonly Assumption[];
  readonly assumedFacts: readonly string[];
  readonly cautions: readonly string[];
  /** The steps to the judged reading of the governing criterion, then its uncertainty. */
  readonly history: readonly Step[];
}

/** All of some zones, each once, best first: as the schemes order them where all have the same, else by how bad they are. */
function inOrder({ judgements, kind }: Verdict, zones: readonly Zone[]): readonly Zone[] {
  const [first, ...others] = judgements.map((one) => one.zones);
  const ladder = first as readonly string[];
  const level = others.every((one) => one.join("\n") === ladder.join("\n"))
    ? (zone: string) => ladder.indexOf(zone)
    : (zone: string) => zoneLevel(kind, zone);
  return Object.freeze([...new Set(zones)].sort((a, b) => level(a) - level(b)));
}

/** True where the upper end of the interval leaves the zones that the best value has. */
function isAsJudged({ judgement, zone, fromThere }: JudgementWithin): boolean {
  return zone === judgement.zone && fromThere.possible.length === judgement.possible.length;
}

const PLACE = "place: not given";

/** The verdict at the upper end of all intervals: as the verdict of the best value is put together. */
function guarded(
  verdict: Verdict,
  all: readonly JudgementWithin[],
): Pick<ZonesWithin, "zone" | "headline" | "word" | "assumedFacts"> {
  const { kind, judgements, deciding, background, assumedFacts, unjudged } = verdict;
  if (all.every(isAsJudged)) return verdict;
  const zone = inOrder(
    verdict,
    all.map((one) => one.zone),
  ).at(-1) as Zone;
  const own = all.flatMap(({ fromThere }) => fromThere.possible);
  const best = inOrder(verdict, own)[0] as Zone;
  const whole = inOrder(verdict, [...own, ...verdict.possible]);
  const possible = Object.freeze(whole.slice(whole.indexOf(best)));
  const [{ fromThere }] = all as readonly [JudgementWithin];
  // a single scheme that judged all that was to be judged says it itself
  const isAlone = all.length === 1 && possible.length === fromThere.possible.length;
  const read = judgements.flatMap((one) => one.unjudged.map(({ as }) => as));
  const unread = unjudged.find(({ as }) => !read.includes(as));
  const open = judgements.find(isOpen)?.word ?? unread?.because;
  const texts = new Set(all.map((one) => one.fromThere.headline));
  const byPlace = possible.length > 1 && texts.size > 1 && assumedFacts.some((one) => one.startsWith(PLACE));
  const told = isAlone ? fromThere.headline : headlineOf(kind, possible, open !== undefined);
  const unreliable = background?.valid === false ? `, ${NOT_RELIABLE}` : "";
  const depends = deciding.length > 0 ? `state the ${deciding.join(" and the ")}` : fromThere.word;
  return {
    zone,
    headline: `${told}${byPlace ? ": state the place" : ""}${unreliable}`,
    word:
      isAlone || possible.length === 1
        ? (all.find((one) => one.zone === zone) as JudgementWithin).fromThere.word
        : byPlace
          ? "the place of the reading decides"
          : (open ?? depends),
    // places that come to the same for the best value need not for the whole interval
    assumedFacts: byPlace ? assumedFacts.map((one) => (one.startsWith(PLACE) ? WORSE_PLACE : one)) : assumedFacts,
  };
}

/** Readings of the measurement that nothing is known of how well. */
function exactCautions(criteria: readonly CriterionWithin[]): string[] {
  const exact = criteria.filter(({ uncertainty }) => uncertainty.standard === 0).map(({ quantity }) => quantity);
  return [...new Set(exact)].map((quantity) => `no uncertainty of the ${quantity} is given: it is taken as exact`);
}

/**
 * The zones that a reading may be in within its uncertainty, and the one that a decision rule takes.
 *
 * The interval of the reading, value plus and minus the expanded uncertainty (k = 2), is held against the limits of every
 * criterion of every scheme that judged it. By guard band the zone is the worst that the interval touches; by simple
 * acceptance it is that of the best value. Probabilities (JCGM 106:2012) are given where a single criterion decides and
 * nothing but the uncertainty stands between reading and zone: with a sine or a single frequency assumed, or with
 * something not judged, they would say more than is known, and `why` says what.
 *
 * @param judgement - what {@link classify} or {@link judge} returned for a reading with an uncertainty in its history, of
 *   {@link parseUncertain} or {@link withUncertainty}
 * @param options - the rule; draws and seed as for {@link uncertaintyOf}
 * @returns the zones, best first, the zone by the rule, the interval in the reader's type, probabilities or why not
 * @throws {@link VeladisError} `missing-fact` for a reading without an uncertainty, `unknown-option`, `wrong-type`, and as
 *   {@link uncertaintyOf}
 * @example
 * ```ts
 * import { judge } from "veladis/severity";
 * import { parseUncertain, zonesWithin } from "veladis/uncertainty";
 *
 * const verdict = judge(parseUncertain("4.9 ± 0.3 mm/s rms (k=2)"), "pump 90 kW 2980 r/min category II");
 * verdict.headline; // => "zone B"
 * const { headline, zones, interval, bestValue, probabilities } = zonesWithin(verdict);
 * headline; // => "zone C"
 * zones; // => ["B", "C"]
 * [interval.low.toFixed(1), interval.high.toFixed(1), interval.type]; // => ["4.6", "5.2", "mm/s rms"]
 * bestValue.headline; // => "zone B"
 * zonesWithin(verdict, { rule: "simple acceptance" }).zone; // => "B"
 * Number(probabilities?.C?.toFixed(2)); // => 0.09
 * zonesWithin(judge("4.9 mm/s rms", "pump 90 kW 2980 r/min category II")); // throws missing-fact
 * ```
 */
export function zonesWithin(judgement: Judgement | Verdict, options: ZonesWithinOptions = {}): ZonesWithin {
  return withParameters({ options, judgement }, () => {
    requireKnownOptions(options, keys, {
      what: "an option of zones within",
      form: 'options such as { rule: "simple acceptance" }',
    });
    const { rule = "guard band", ...reckoned } = options;
    requireChoice(rule, Object.keys(zoneRules) as ZoneRule[], "a decision rule", { option: "rule" });
    const verdict = uncertainVerdict(judgement);
    const all = verdict.judgements.map((one) => judgementWithin(one, reckoned));
    const zones = inOrder(verdict, [...verdict.possible, ...all.flatMap((one) => one.zones)]);
    const { zone, headline, word, assumedFacts } = rule === "guard band" ? guarded(verdict, all) : verdict;
    const placed = all.flatMap(({ criteria }) => criteria);
    const criteria = placed.map(({ answer }) => answer);
    const level = ({ zone: one }: JudgementWithin): number =>
      inOrder(
        verdict,
        all.map((each) => each.zone),
      ).indexOf(one);
    const [{ governing }] = [...all].sort((a, b) => level(b) - level(a) || b.governing.used - a.governing.used) as [
      JudgementWithin,
    ];
    const { uncertainty, interval } = governing.answer;
    const { kind } = verdict;
    return Object.freeze({
      ...{ kind, rule, zone, headline, word, zones },
      worst: zones.at(-1) as Zone,
      bestValue: Object.freeze({ zone: verdict.zone, headline: verdict.headline }),
      ...{ uncertainty, interval, criteria: Object.freeze(criteria) },
      ...zoneProbabilities(verdict, placed, reckoned),
      assumed: union(verdict.assumed, uncertainty.assumed),
      assumedFacts: Object.freeze([...assumedFacts]),
      cautions: Object.freeze([...exactCautions(criteria), ...verdict.cautions.filter((text) => text !== BEST_VALUE)]),
      history: uncertainty.history,
    });
  });
}
