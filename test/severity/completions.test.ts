import fc from "fast-check";
import { VeladisError } from "veladis";
import { judge, type Verdict } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { asData, inWords, type Nameplate, type NameplateFact, someNameplate, someReading, without } from "./nameplates";

const NAMEPLATES = Number(process.env.VELADIS_VAGUE ?? 25);
const COMPLETIONS = Number(process.env.VELADIS_COMPLETIONS ?? 100);

const order = ["A", "AB", "B", "C", "D", "start-up", "service", "alarm", "shutdown", "pass", "fail"];

function judged(reading: string, plate: Nameplate): Verdict | undefined {
  try {
    return judge(reading, asData(plate));
  } catch (error) {
    if (error instanceof VeladisError) return undefined;
    throw error;
  }
}

/** A vague nameplate with what another of the same kind of machine tells besides; no fact that was known is changed. */
function completed(vague: Nameplate, other: Nameplate): Nameplate {
  // a shaft height in mm is that of a metric frame
  const { frame: _, ...rest } = other;
  return { ...(vague.shaftHeight === undefined ? other : rest), ...vague };
}

const counts = { vague: 0, completions: 0, answered: 0, refused: 0, schemes: 0 };

/** Holds what is told of a completed nameplate against what was told of the vague one. */
function hold(vague: Nameplate, verdict: Verdict, whole: Nameplate, reading: string): void {
  counts.completions++;
  const answer = judged(reading, whole);
  if (answer === undefined) {
    counts.refused++;
    return;
  }
  counts.answered++;
  const where = `${reading}, ${inWords(vague)}; completed ${inWords(whole)}`;
  for (const { scheme, zone, worst } of answer.judgements) {
    counts.schemes++;
    const mine = verdict.judgements.find((one) => one.scheme === scheme);
    // a scheme that could not judge so vague a machine leaves all open that is worse
    const reach = order.indexOf(mine?.worst ?? verdict.worst);
    expect(reach, `${where}: ${scheme} ${worst}, was ${mine?.headline ?? verdict.headline}`).toBeGreaterThanOrEqual(
      order.indexOf(worst),
    );
    expect(verdict.possible.includes(zone) || order.indexOf(verdict.zone) > order.indexOf(zone), where).toBe(true);
    // where the worst is found already, nothing that could not be judged makes it worse
    if (mine === undefined && order.indexOf(verdict.zone) < order.indexOf(verdict.zones.at(-1) as string))
      expect(verdict.headline, `${where}: ${scheme} was not thought of`).toMatch(/or worse|not decided/);
  }
}

describe("what is possible of a machine of which not all is known", () => {
  it(
    "holds every scheme and the worst zone that any completion of its nameplate comes to",
    () => {
      const some = fc.record({
        vague: someNameplate,
        // new or in service, and the place of a velocity, are what the question is, not what is left open
        leave: fc.array(fc.nat(), { minLength: 3, maxLength: 6 }),
        reading: someReading,
      });
      for (const { vague: whole, leave, reading } of fc.sample(some, NAMEPLATES * 4)) {
        if (counts.vague >= NAMEPLATES) break;
        const asked = (fact: string) => fact !== "type" && fact !== "condition" && fact !== "place";
        const facts = (Object.keys(whole) as NameplateFact[]).filter(asked);
        const vague: Nameplate = {
          condition: "in service",
          place: "housing",
          ...without(
            whole,
            leave.map((pick) => facts[pick % Math.max(1, facts.length)] as NameplateFact),
          ),
        };
        const verdict = judged(reading, vague);
        if (verdict === undefined) continue;
        counts.vague++;
        const others = someNameplate.filter(({ type }) => type === vague.type);
        for (const other of fc.sample(others, COMPLETIONS)) hold(vague, verdict, completed(vague, other), reading);
      }
      if (COMPLETIONS > 500) console.log(JSON.stringify(counts));
      expect(counts.vague).toBe(NAMEPLATES);
      expect(counts.answered / counts.completions).toBeGreaterThan(0.3);
    },
    NAMEPLATES * COMPLETIONS * 20,
  );
});
