import fc from "fast-check";
import { VeladisError } from "veladis";
import { judge, type Verdict } from "veladis/severity";
import { describe, expect, it } from "vitest";
import {
  asData,
  inWords,
  type Nameplate,
  type NameplateFact,
  powerEdges,
  someNameplate,
  someReading,
  speedEdges,
  without,
} from "./nameplates";

const RUNS = Number(process.env.VELADIS_PAIRS ?? 3000);

/** How bad a zone is; of one kind of scheme only. */
const order: Readonly<Record<string, readonly string[]>> = {
  zones: ["A", "AB", "B", "C", "D"],
  operation: ["start-up", "service", "alarm", "shutdown"],
  acceptance: ["pass", "fail"],
};
const levelOf = (kind: string, zone: string): number => {
  const level = order[kind]?.indexOf(zone) ?? -1;
  if (level < 0) throw new Error(`${zone} is no zone of ${kind}`);
  return level;
};

function isNear(values: Nameplate["speed"], edges: readonly number[]): boolean {
  return [values ?? []].flat().some((value) => edges.some((edge) => Math.abs(value / edge - 1) < 0.01));
}

/** True where the drop crosses the edge of a scheme, or may. */
function crosses({ power, speed }: Nameplate, dropped: readonly NameplateFact[]): boolean {
  const drops = dropped.includes("power") || dropped.includes("speed");
  return drops || isNear(power, powerEdges) || isNear(speed, speedEdges);
}

const counts = {
  pairs: 0,
  answered: 0,
  refused: 0,
  refusedAfter: 0,
  compared: 0,
  otherKind: 0,
  crossed: 0,
  changed: 0,
};

function answerOf(reading: string, machine: Parameters<typeof judge>[1]): Verdict | VeladisError {
  try {
    return judge(reading, machine);
  } catch (error) {
    if (error instanceof VeladisError) return error;
    throw error;
  }
}

function schemesOf({ judgements }: Verdict): string {
  return judgements
    .map(({ scheme }) => scheme)
    .sort()
    .join();
}

/** True where the facts that are left are refused as out of range with some power or speed in the place of those dropped. */
function contradicts(plate: Nameplate, dropped: readonly NameplateFact[], reading: string): boolean {
  const powers = dropped.includes("power") ? powerEdges.map((power) => ({ power })) : [{}];
  const speeds = dropped.includes("speed") ? speedEdges.map((speed) => ({ speed })) : [{}];
  return powers.some((power) =>
    speeds.some((speed) => {
      const answer = answerOf(reading, asData({ ...without(plate, dropped), ...power, ...speed }));
      return answer instanceof VeladisError && answer.code === "out-of-range";
    }),
  );
}

/** Judges with all facts and without some, and holds the one against the other. */
function hold(plate: Nameplate, dropped: readonly NameplateFact[], reading: string, isInWords: boolean): void {
  const written = isInWords ? inWords : asData;
  counts.pairs++;
  const full = answerOf(reading, written(plate));
  if (full instanceof VeladisError) {
    counts.refused++;
    return;
  }
  counts.answered++;
  const less = answerOf(reading, written(without(plate, dropped)));
  const where = `${reading}, ${inWords(plate)}, without ${dropped.join(" and ")}`;
  if (less instanceof VeladisError) {
    // what is asked for then is a fact, or the frequency that a speed stood in for; never is the machine refused,
    // unless the facts that are left contradict each other, and are refused with some power or speed given too
    if (!contradicts(plate, dropped, reading))
      expect(["missing-fact", "missing-frequency"], `${where}: ${less.message}`).toContain(less.code);
    counts.refusedAfter++;
    return;
  }
  if (crosses(plate, dropped)) counts.crossed++;
  if (schemesOf(full) !== schemesOf(less)) counts.changed++;
  expect(less.kind, where).toBe(full.kind);
  counts.compared++;
  const worst = levelOf(less.kind, less.worst);
  expect(worst, `${where}: ${full.headline}, then ${less.headline}`).toBeGreaterThanOrEqual(
    levelOf(full.kind, full.worst),
  );
  expect(worst, where).toBeGreaterThanOrEqual(levelOf(full.kind, full.zone));
  for (const { kind, worst: own } of less.judgements) expect(levelOf(kind, own), where).toBeLessThanOrEqual(worst);
  expect(less.possible.at(-1), where).toBe(less.worst);
  expect(less.possible, where).toContain(less.zone);
  // nothing that was given is passed over: each fact of the machine is in the answer
  for (const fact of Object.keys(plate))
    if (!dropped.includes(fact as NameplateFact)) expect(less.machine).toHaveProperty(fact);
}

describe("a fact left out of a nameplate", () => {
  it(
    "never makes the verdict milder, and is never the cause of a refusal other than for what is missing",
    () => {
      fc.assert(
        fc.property(
          someNameplate,
          someReading,
          fc.array(fc.nat(), { minLength: 1, maxLength: 2 }),
          fc.boolean(),
          (plate, reading, picks, isInWords) => {
            // the condition chooses the question: in service, or an acceptance test; and so does the place of a velocity,
            // which is that of the housing unless somebody says otherwise; the kind of machine is always asked for
            const asks = ["type", "condition", ...(/\d (?:um|mil) /.test(reading) ? [] : ["place"])];
            const facts = (Object.keys(plate) as NameplateFact[]).filter((fact) => !asks.includes(fact));
            fc.pre(facts.length > 0);
            const dropped = picks.map((pick) => facts[pick % facts.length] as NameplateFact);
            hold(plate, [...new Set(dropped)], reading, isInWords);
          },
        ),
        { numRuns: RUNS },
      );
      if (RUNS > 10_000) console.log(JSON.stringify(counts));
      // refusals are counted apart: refusing more would not make this pass
      expect(counts.refused / counts.pairs).toBeLessThan(0.6);
      expect(counts.refusedAfter / counts.answered).toBeLessThan(0.25);
      expect(counts.compared / counts.pairs).toBeGreaterThan(0.3);
      expect(counts.crossed / counts.compared).toBeGreaterThan(0.2);
      expect(counts.changed / counts.compared).toBeGreaterThan(0.1);
    },
    RUNS * 20,
  );
});
