import fc from "fast-check";
import { type Amplitude, parseAmplitude, VeladisError } from "veladis";
import { proposeSetpoints } from "veladis/protection";
import { judge, type Zone } from "veladis/severity";
import { describe, expect, it } from "vitest";

const maybe = (...words: string[]) => fc.constantFrom("", ...words);

/** Nameplates in words, any fact of which may be left out, the kind of machine excepted; the lowest speed beside them. */
const nameplates = fc
  .tuple(
    fc.constantFrom(
      ...["pump", "motor", "generator", "fan", "compressor", "blower", "steam turbine", "gas turbine", "gear drive"],
      ...["reciprocating compressor", "hydro turbine", "turbine"],
    ),
    maybe("3 kW", "90 kW", "250 kW", "400 kW", "12 MW", "60 MW"),
    fc.oneof(
      fc.constant(undefined),
      fc.constantFrom("120", "240", "490", "590", "990", "1490", "2980", "3570", "5400", "9000"),
      fc.constantFrom("300 to 900", "900 to 1800", "1500 to 5400"),
    ),
    maybe("rigid", "flexible"),
    maybe("housing", "shaft"),
    maybe("category I", "category II", "group 1", "group 2", "BV-2", "BV-3"),
    maybe("NEMA", "IEC"),
  )
  .map(([type, power, speed, ...facts]) => {
    const words = [type, power, speed === undefined ? "" : `${speed} r/min`, ...facts];
    const [lowest] = speed?.split(" to ") ?? [];
    return {
      words: words.filter((one) => one !== "").join(" "),
      hertz: lowest === undefined ? undefined : Number(lowest) / 60,
    };
  });

/** The answer, or undefined where the question is refused; anything else that is thrown is a bug. */
function unlessRefused<Answer>(answerOf: () => Answer): Answer | undefined {
  try {
    return answerOf();
  } catch (error) {
    if (error instanceof VeladisError) return undefined;
    throw error;
  }
}

describe("a trip that is proposed, as judge sees it", () => {
  it("is the most that is not yet in the worst zone, for the same words", () => {
    let held = 0;
    fc.assert(
      fc.property(nameplates, fc.constantFrom("mm/s rms", "in/s pk", "um pp", "mil pp"), ({ words, hertz }, type) => {
        const proposal = unlessRefused(() => proposeSetpoints({ baseline: `0.01 ${type}`, machine: words }));
        if (proposal?.trip == null) return;
        const isUnguarded = proposal.warnings.some(
          ({ code, text }) => code === "other quantities" && text.includes("unguarded"),
        );
        if (isUnguarded || proposal.trip.reasons.some(({ text }) => text.startsWith("no higher than"))) return;
        const zoneAt = (value: number) => {
          const reading: Amplitude = { ...parseAmplitude(`1 ${type}`), value, hertz };
          const { zone, zones } = judge(reading, words);
          return [zone, (zones as readonly Zone[]).indexOf(zone), zones.length] as const;
        };
        const trip = proposal.trip.asked.value;
        const [, at, count] = zoneAt(trip);
        expect([words, type, trip, at < count - 1]).toEqual([words, type, trip, true]);
        expect([words, type, trip, zoneAt(trip * 1.001)[1]]).toEqual([words, type, trip, count - 1]);
        held += 1;
      }),
      { numRuns: 600 },
    );
    expect(held).toBeGreaterThan(150);
  });

  it("comes from the schemes by which judge judges", () => {
    fc.assert(
      fc.property(nameplates, fc.constantFrom("mm/s rms", "um pp"), ({ words, hertz }, type) => {
        const reading: Amplitude = { ...parseAmplitude(`0.01 ${type}`), hertz };
        const verdict = unlessRefused(() => judge(reading, words));
        const proposal = unlessRefused(() => proposeSetpoints({ baseline: `0.01 ${type}`, machine: words }));
        const ids = verdict?.judgements.map(({ scheme }) => scheme).sort();
        // where one of several schemes cannot be applied, a trip by the others would be too high, and is refused
        const ofProposal =
          proposal?.schemes.map(({ scheme }) => scheme).sort() ?? (hertz === undefined ? ids : undefined);
        expect([words, type, ofProposal]).toEqual([words, type, ids]);
      }),
      { numRuns: 300 },
    );
  });
});
