import { type Amplitude, format, significant, union } from "../reading/index";
import { classify, schemeById, schemeChoice } from "../severity/index";
import { behind, type Report } from "./value";

/**
 * A reading judged for a machine: zone and word first, then the nearest limit, the scheme, and what to know; with all
 * that the reading and the judgement assumed.
 */
export function judged(reading: Amplitude, machine: string, scheme: string | undefined): Report {
  const by = scheme === undefined ? schemeChoice(machine).scheme : schemeById(scheme);
  const judgement = classify(reading, { scheme: by, machine, assume: "lowest limits" });
  const { zone, word, limit, margin, standard, edition, verified, assumedFacts, cautions } = judgement;
  const away =
    margin.decibels < 0 ? `${significant(-margin.decibels)} dB above` : `${significant(margin.decibels)} dB below`;
  const way = { ...reading, assumed: union(reading.assumed, judgement.assumed) };
  const assumed = assumedFacts.map((fact) => `  assumed: ${fact}`);
  return {
    report: [
      `${zone}${word === zone ? "" : `, ${word}`}: ${format(reading)} is ${away} the ${limit.name} limit, ${format(limit.value, limit.as)}${behind(way)}`,
      `  by ${standard} (${edition})${verified ? "" : ", limits FROM MEMORY"}`,
      ...assumed,
      ...cautions.map((caution) => `  caution: ${caution}`),
    ].join("\n"),
    data: Object.freeze({ ...judgement, assumed: way.assumed }),
  };
}
