import { pointsWithin, uncertainPoints } from "../conformity/index";
import { limitsKnown, visibleText } from "../core/index";
import { type Amplitude, union } from "../reading/index";
import { classify, type Judgement, judge, judgePoints, marginText, type Scheme, type Verdict } from "../severity/index";
import { decidedWithin, withinLines } from "./judged-within";
import { phaseCaution } from "./phase-words";
import { numberText } from "./reading-words";
import { schemeAmong } from "./scheme-among";
import { behind, type Report } from "./value";

/** What a headline says more than the zone, the nearest limit, and what was assumed on the way. */
function firstLine({ headline, word }: Pick<Judgement, "headline" | "word">, reading: Amplitude, by: Verdict): string {
  const way = { ...reading, assumed: union(reading.assumed, by.assumed) };
  return `${headline}${word === headline || headline.includes(": ") ? "" : `, ${word}`}: ${numberText(reading)} is ${marginText(by)}${behind(way)}`;
}

/** The schemes of a verdict, what it was judged by and what it rests on. */
function restLines({
  standard,
  edition,
  provenance,
  confirmed,
  judgements,
  assumedFacts,
  setAside,
  ...rest
}: Verdict): string[] {
  const [, ...others] = judgements;
  const known = limitsKnown(provenance, confirmed);
  const not = rest.unjudged.map(({ as, because }) => `${as}: ${because}`);
  return [
    `  by ${standard} (${edition})${known === undefined ? "" : `, ${known}`}`,
    ...others.map((one) => `  by ${one.standard} (${one.edition}): ${one.headline}`),
    ...[...new Set(not)].map((text) => `  not judged: ${text}`),
    ...assumedFacts.map((text) => `  assumed: ${text}`),
    ...setAside.map((text) => `  set aside: ${text}`),
    ...rest.cautions.map((text) => `  caution: ${text}`),
  ];
}

/** Lines that hold texts from outside. */
function lines(...texts: readonly string[]): string {
  return texts.map(visibleText).join("\n");
}

/** The judgement by one scheme, as a verdict. */
function byScheme(reading: Amplitude, machine: string, scheme: Scheme): Verdict {
  const judgement = classify(reading, { scheme, machine, assume: "lowest limits" });
  return { ...judgement, judgements: [judgement], deciding: [] };
}

/**
 * A reading judged for a machine: headline and word first, then the nearest limit, the schemes, and what to know; with
 * all that the reading and the judgement assumed.
 */
export function judged(
  reading: Amplitude,
  machine: string,
  scheme: string | undefined,
  schemes: readonly Scheme[] | undefined,
): Report {
  const caution = phaseCaution(reading);
  const ofBest =
    scheme === undefined
      ? judge(reading, machine, schemes === undefined ? {} : { schemes })
      : byScheme(reading, machine, schemeAmong(scheme, schemes));
  const { verdict: ofReading, lines: within } = decidedWithin(reading, ofBest);
  const cautions = caution === undefined ? ofReading.cautions : Object.freeze([caution, ...ofReading.cautions]);
  const verdict = { ...ofReading, cautions };
  return {
    report: lines(firstLine(verdict, reading, verdict), ...within, ...restLines(verdict)),
    data: Object.freeze({ ...verdict, assumed: union(reading.assumed, verdict.assumed) }),
  };
}

/** Readings of several points of a machine, the worst in front. */
export function judgedPoints(
  points: string,
  machine: string,
  scheme: string | undefined,
  schemes: readonly Scheme[] | undefined,
): Report {
  const all = schemes === undefined ? {} : { schemes };
  const ofBest = judgePoints(
    uncertainPoints(points),
    machine,
    scheme === undefined ? all : { scheme: schemeAmong(scheme, schemes) },
  );
  const answer = pointsWithin(ofBest);
  const { governing, notRead } = answer;
  const { reading, point } = governing;
  const verdict = { ...governing.verdict, cautions: [...answer.cautions, ...governing.verdict.cautions] };
  return {
    report: lines(
      `${point} governs, ${firstLine(answer, reading, verdict)}`,
      ...answer.points.map((one) => `  ${one.point} ${numberText(one.reading)}: ${one.verdict.headline}`),
      ...(governing.within === undefined ? [] : withinLines(governing.within)),
      ...(notRead.length === 0 ? [] : [`  not read: ${notRead.join(", ")}`]),
      ...restLines(verdict),
    ),
    data: answer,
  };
}
