import { cautions } from "../core/index";
import { format, isClipped, significant } from "../reading/index";
import {
  type AsFoundAsLeft,
  foundMeanings,
  type KnownCheckResult,
  type Linearity,
  showsNothing,
} from "../verification/index";
import { passesNothing } from "./tolerance-text";

type Judged = Pick<KnownCheckResult, "verdict" | "error" | "known" | "indicated" | "shown">;

type PartsOf = Pick<KnownCheckResult, "parts" | "method" | "uncertainty" | "as">;

/** When a device that reads low acts; nothing for one that passes or reads high. */
function lateRemarks({ verdict, error, known, indicated, shown }: Judged, which = ""): string[] {
  if (verdict === "pass" || error >= 0) return [];
  if (indicated.value <= 0) return [`${which}the device shows nothing, as a dead one does: it does not act`];
  if (showsNothing({ shown, indicated, error })) {
    return [`${which}the device shows no more than the start of its loop, 4 mA, as a dead one does: it fails`];
  }
  const times = significant(known.value / indicated.value, 4);
  return [
    `${which}the device reads low: it acts only at ${times} times its setting, if its error there is the same share`,
  ];
}

/** What to know of levels that a loop has clipped. */
function loopRemarks({ known, shown }: Pick<KnownCheckResult, "known" | "shown">, which = ""): string[] {
  return Object.entries({ "the known level": known, "the level shown": shown }).flatMap(([name, { state }]) =>
    isClipped(state)
      ? [`${which}${name} is ${state} of its loop and was clipped: the true one is unknown, so the check cannot pass`]
      : [],
  );
}

/** That nothing can pass, where that is so. */
function nothingPasses(check: KnownCheckResult, which = ""): string[] {
  return passesNothing(check)
    ? [
        `${which}no error passes: the uncertainty is larger than the tolerance; take a better known level or a wider tolerance`,
      ]
    : [];
}

/** What the uncertainty is made of, where a level has one of its own. */
function uncertaintyRemarks({ parts, method, uncertainty, as: unit }: PartsOf, which = ""): string[] {
  if (parts.length === 0 || uncertainty === null) return [];
  const texts = parts.map(({ name, stated, share }) => `${name} ${stated} (${(100 * share).toFixed(0)} %)`);
  const how = parts.length > 1 ? `, taken as independent, ${method}` : `, ${method}`;
  return [`${which}uncertainty ${significant(uncertainty)} ${unit} (k = 2) made of: ${texts.join("; ")}${how}`];
}

/** What is to be known of this check besides what is of all. */
function ownCautions({ cautions: all }: Pick<KnownCheckResult, "cautions">, which = ""): string[] {
  return all.filter((text) => !cautions.includes(text)).map((text) => `${which}${text}`);
}

/** What one check means for the device and for the time since the last check. */
export function checkRemarks(check: KnownCheckResult): string[] {
  return [
    ...uncertaintyRemarks(check),
    ...nothingPasses(check),
    ...ownCautions(check),
    ...loopRemarks(check),
    ...lateRemarks(check),
    ...(check.verdict === "fail" ? [foundMeanings.fail] : []),
  ];
}

/** The same of a check as found and as left. */
export function pairRemarks({ asFound, asLeft, meaning }: AsFoundAsLeft): string[] {
  const sameCautions = ownCautions(asFound).join() === ownCautions(asLeft).join();
  return [
    ...uncertaintyRemarks(asFound, "as found: "),
    ...nothingPasses(asFound, "as found: "),
    ...ownCautions(asFound, sameCautions ? "" : "as found: "),
    ...loopRemarks(asFound, "as found: "),
    ...lateRemarks(asFound, "as found: "),
    meaning,
    ...uncertaintyRemarks(asLeft, "as left: "),
    ...nothingPasses(asLeft, "as left: "),
    ...(sameCautions ? [] : ownCautions(asLeft, "as left: ")),
    ...loopRemarks(asLeft, "as left: "),
    ...lateRemarks(asLeft, "as left: "),
    ...(asLeft.verdict === "pass" ? [] : ["as left it does not pass: do not rely on it for protection"]),
  ];
}

/** The same of several levels; of those that read low and do not pass, the worst is told. */
export function linearityRemarks(found: Linearity): string[] {
  const isUncertain = found.points.some(({ parts }) => parts.length > 0);
  return [
    ...(isUncertain ? ["slope, offset and the line are those of the best values"] : []),
    ...severalRemarks(found.points),
  ];
}

/** The same of several checks. */
export function severalRemarks(points: readonly KnownCheckResult[]): string[] {
  const [lowest] = points
    .filter((point) => point.verdict !== "pass" && point.error < 0)
    .sort((a, b) => a.errorPercent - b.errorPercent);
  return [
    ...new Set(points.flatMap((point) => ownCautions(point))),
    ...points.flatMap((point) => uncertaintyRemarks(point, `at ${format(point.known)}: `)),
    ...points.flatMap((point) => nothingPasses(point, `at ${format(point.known)}: `)),
    ...points.flatMap((point) => loopRemarks(point, `at ${format(point.known)}: `)),
    ...(lowest === undefined ? [] : lateRemarks(lowest, `at ${format(lowest.known)}: `)),
    ...(points.some(({ verdict }) => verdict === "fail") ? [foundMeanings.fail] : []),
  ];
}
