import { limitsKnown } from "../core/index";
import { assumedText } from "../reading/index";
import type { CompiledClassifier, Scheme } from "../severity/index";
import { remark } from "./literal";
import type { ZoneAnswer } from "./zone-case";

/** The schemes by name; with their places where these differ. */
function namesOf(schemes: readonly Scheme[]): readonly string[] {
  const isOne = new Set(schemes.map(({ place }) => place)).size === 1;
  return schemes.map(({ standard, edition, place }) => `${standard} (${edition})${isOne ? "" : ` on the ${place}`}`);
}

/** What a judgement rests on: what was assumed, set aside and not judged, and how the limits are known. */
export function toldOf(
  { provenance, verified, confirmed, differences, assumed, assumedFacts, setAside, unjudged }: CompiledClassifier,
  crestFactor: number | undefined,
): readonly string[] {
  const known = limitsKnown(provenance, confirmed);
  // where none was stated, the facts assumed say which was taken
  const told = crestFactor === undefined ? assumed.filter((one) => one !== "crest-factor") : assumed;
  const words = assumedText({ assumed: told, ...(crestFactor !== undefined && { crestFactor }) }).slice(1, -1);
  return [
    ...new Set(unjudged.map(({ as, because }) => `not judged: limits in ${as}: ${because}`)),
    ...(known === undefined ? [] : [`${known}${verified ? "" : ": check them against the standard"}`]),
    ...differences,
    ...(words ? [`assumed: ${words}`] : []),
    ...assumedFacts,
    ...setAside.map((one) => `set aside: ${one}`),
  ];
}

/** What zones in SQL rest on: the schemes, and {@link toldOf} the judgement. */
export function zoneRemark(
  judge: CompiledClassifier,
  schemes: readonly Scheme[],
  answer: ZoneAnswer,
  crestFactor: number | undefined,
): string {
  const open = answer === "worst" ? "the worst zone that is possible" : "the zone that was judged; worse is possible";
  return remark(
    [
      `${namesOf(schemes).join(" and ")}, ${judge.from}`,
      ...(schemes.length > 1 ? ["the worst of them governs"] : []),
      ...(judge.complete ? [] : [open]),
      ...toldOf(judge, crestFactor),
    ].join("; "),
  );
}
