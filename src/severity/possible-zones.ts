import { type SchemeKind, type Zone, zoneWord } from "./kinds";

/** The zones that are still possible, and the verdict in few words. */
export interface PossibleZones<K extends SchemeKind = SchemeKind> {
  /** All zones that are still possible with what is known, best first. */
  readonly possible: readonly Zone<K>[];
  /** The worst of them. */
  readonly worst: Zone<K>;
  /** The verdict: one zone where one is possible, else `zone B or worse` or `zone B to C`. */
  readonly headline: string;
  /** What the zone means, in words; where more than one is possible, why. */
  readonly word: string;
}

/** Zones in few words: one, or from the best to the worst, or worse. */
export function zonesText(zones: readonly string[], isOpen: boolean): string {
  const [best, worst] = [zones[0] as string, zones.at(-1) as string];
  return zones.length === 1 ? best : isOpen ? `${best} or worse` : `${best} to ${worst}`;
}

/** The verdict in few words. */
export function headlineOf(kind: SchemeKind, zones: readonly string[], isOpen: boolean): string {
  if (kind === "acceptance" && zones.length > 1) return "pass or fail, not decided";
  return kind === "zones" ? `zone ${zonesText(zones, isOpen)}` : zonesText(zones, isOpen);
}

/** True for a verdict that says "or worse": something was not judged. */
export function isOrWorse({ headline }: Pick<PossibleZones, "headline">): boolean {
  return headline.endsWith("or worse");
}

/**
 * What is possible from the zone that was judged up to the worst that is possible, by their numbers among `zones`. Made
 * once for each pair.
 */
export function possibleZones(kind: SchemeKind, zones: readonly Zone[]) {
  const made = new Map<string, PossibleZones>();
  const single = zones.map((zone) =>
    Object.freeze({
      possible: Object.freeze([zone]),
      worst: zone,
      headline: headlineOf(kind, [zone], false),
      word: zoneWord(kind, zone),
    }),
  );
  return (at: number, upTo: number, openBecause: string | undefined): PossibleZones => {
    if (at === upTo) return single[at] as PossibleZones;
    const key = `${at} ${upTo} ${openBecause}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    const possible = Object.freeze(zones.slice(at, upTo + 1));
    const worst = possible.at(-1) as Zone;
    const headline = headlineOf(kind, possible, openBecause !== undefined);
    const word = openBecause ?? `what was not measured may reach ${kind === "zones" ? "zone " : ""}${worst}`;
    const answer = Object.freeze({ possible, worst, headline, word });
    // a handful of reasons, and pairs of a dozen zones at most
    if (made.size < 256) made.set(key, answer);
    return answer;
  };
}
