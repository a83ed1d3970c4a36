import { parseAmplitude } from "veladis";
import { type PlantMachine, scheduleSetpoints } from "veladis/plant";
import { proposeSetpoints } from "veladis/protection";
import { describe, expect, it } from "vitest";

const pump = { type: "pump", power: "90 kW", speed: "2980 r/min", category: "II" } as const;
const baseline = { level: parseAmplitude("2.2 mm/s rms") };
const row = (tag: string, more: Partial<PlantMachine> = {}): PlantMachine => ({
  ...{ tag, line: 2, machine: pump, settings: {}, device: {}, own: {}, baseline },
  ...more,
});
const scheduleOf = (...machines: PlantMachine[]) => scheduleSetpoints({ machines, refused: [], ownColumns: [] });
const changeOf = (machine: PlantMachine, setting: string) =>
  scheduleOf(machine).machines[0]?.changes.find((one) => one.setting === setting);

describe("a schedule of setpoints", () => {
  it("proposes for each machine what proposeSetpoints does", () => {
    const own = row("P-1", { loop: "0 to 20 mm/s rms", device: { step: "0.2 mm/s rms" }, tripDelay: 4 });
    const alone = proposeSetpoints({
      ...{ baseline: "2.2 mm/s rms", machine: pump, sensor: { loop: "0 to 20 mm/s rms" } },
      ...{ device: { step: "0.2 mm/s rms" }, onDelay: 4 },
    });
    const { proposal } = scheduleOf(own).machines[0] as NonNullable<ReturnType<typeof scheduleOf>["machines"][0]>;
    expect(proposal.trip?.stored.value).toBe(alone.trip?.stored.value);
    expect(proposal.alarm?.stored.value).toBe(alone.alarm?.stored.value);
    expect(proposal.warnings).toEqual(alone.warnings);
  });

  it("tells by how much what is set would be raised or lowered, in the unit of the proposal", () => {
    // ISO 10816-7 category II, to 200 kW: B/C 5.1, C/D 8.5 (as the library has them); alarm 2.2 + 5.1 / 4 = 3.475
    const set = row("P-1", { trip: parseAmplitude("6 mm/s rms"), alarm: parseAmplitude("0.3 in/s pk"), tripDelay: 12 });
    const trip = changeOf(set, "trip");
    expect([trip?.does, trip?.isAllowed]).toEqual(["raise", true]);
    expect(trip?.difference).toBeCloseTo(2.5, 12);
    const alarm = changeOf(set, "alarm");
    // 0.3 in/s pk is 0.3 x 25.4 / sqrt(2) = 5.388 mm/s rms
    expect(alarm?.set).toBeCloseTo((0.3 * 25.4) / Math.SQRT2, 9);
    expect([alarm?.does, alarm?.assumed]).toEqual(["lower", ["sine"]]);
    expect(alarm?.proposed).toBeCloseTo(3.475, 12);
    const delay = changeOf(set, "trip delay");
    expect([delay?.does, delay?.difference, delay?.isAllowed]).toEqual(["lower", -9, false]);
  });

  it("keeps what is as proposed, and says where the list says nothing", () => {
    const set = row("P-1", { trip: parseAmplitude("8.5 mm/s rms") });
    expect(changeOf(set, "trip")?.text).toContain("keep");
    expect(changeOf(set, "alarm")?.does).toBe("set");
    expect(
      changeOf(
        row("P-1", {
          trip: parseAmplitude("50 um pp"),
          machine: { ...pump, speed: { from: "900 r/min", to: "2980 r/min" } },
        }),
        "trip",
      )?.text,
    ).toContain("frequency");
  });

  it("has first what is set above all that the rules allow, then what would be lowered", () => {
    const { machines } = scheduleOf(
      row("keep", { trip: parseAmplitude("8.5 mm/s rms") }),
      row("lower", { trip: parseAmplitude("9 mm/s rms"), line: 3 }),
      row("above", { trip: parseAmplitude("11 mm/s rms"), line: 4 }),
    );
    expect(machines.map(({ tag, standing }) => [tag, standing])).toEqual([
      ["above", "above the rules"],
      ["lower", "would be lowered"],
      ["keep", "would change"],
    ]);
  });

  it("has no trip above the ceiling of its row, on a step of the device", () => {
    const capped = row("P-1", {
      ceiling: parseAmplitude("6.3 mm/s rms"),
      device: { step: "0.5 mm/s rms" },
      trip: parseAmplitude("7 mm/s rms"),
    });
    const [machine] = scheduleOf(capped).machines;
    expect(machine?.proposal.trip?.stored.value).toBeCloseTo(6, 12);
    expect(machine?.proposal.trip?.range[1]).toBeCloseTo(6.3, 12);
    expect(machine?.standing).toBe("above the rules");
    expect(machine?.changes[0]?.why.at(-1)?.text).toContain("ceiling");
    const low = scheduleOf(row("P-1", { ceiling: parseAmplitude("3 mm/s rms") })).machines[0];
    expect(low?.proposal.warnings.some(({ code }) => code === "alarm not below trip")).toBe(true);
    expect(low?.standing).toBe("no trip proposed");
    const none = scheduleOf(row("P-1", { ceiling: parseAmplitude("3 mm/s rms"), device: { lowest: "4 mm/s rms" } }))
      .machines[0];
    expect(none?.proposal.trip).toBeNull();
  });

  it("goes by the limits of the row, and by the table that it names", () => {
    const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" };
    expect(changeOf(row("P-1", { limits }), "trip")?.proposed).toBe(7.1);
    const named = scheduleOf(row("P-1", { table: "iso-10816-7-2009" })).machines[0];
    expect([named?.chosenBy, named?.proposal.trip?.stored.value]).toEqual(["table", 8.5]);
  });

  it("says of limits of the list that the list states them", () => {
    const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker of the pump" };
    const notes = scheduleOf(row("P-1", { limits })).machines[0]?.proposal.trip?.reasons.map(
      ({ source }) => source.note,
    );
    expect([notes?.includes("as stated by the list"), notes?.includes("as stated by the user")]).toEqual([true, false]);
  });

  it("does not call the median of several readings a single one", () => {
    const many = scheduleOf(row("P-1", { baseline: { ...baseline, count: 14 } })).machines[0];
    expect(many?.proposal.warnings.find(({ code }) => code === "single baseline")?.text).toContain("median of 14");
  });

  it("says why nothing is proposed, and proposes for the others", () => {
    const refusedRow = { line: 9, tag: "P-9", code: "syntax", message: "torn" };
    const { machines, refused } = scheduleSetpoints({
      machines: [
        row("P-1"),
        row("P-2", { line: 3, machine: {} }),
        row("P-3", { line: 4 }),
        row("P-3", { line: 5 }),
        row("P-9", { line: 9 }),
      ],
      refused: [refusedRow],
      ownColumns: [],
    });
    expect(machines.map(({ tag }) => tag)).toEqual(["P-1"]);
    expect(refused.map(({ line, code }) => [line, code])).toEqual([
      [9, "syntax"],
      [3, "missing-fact"],
      [4, "out-of-range"],
      [5, "out-of-range"],
    ]);
  });

  it("a trip delay not below the coast-down is not kept: half of the coast-down is proposed", () => {
    // common practice, no source; the audit warns of the same
    const set = row("P-1", { coastDown: 2, tripDelay: 3, trip: parseAmplitude("8 mm/s rms") });
    const delay = changeOf(set, "trip delay");
    expect([delay?.does, delay?.proposed, delay?.isAllowed, delay?.allowed]).toEqual(["lower", 1, false, [0, 2]]);
    expect(delay?.text).toContain("NOT BELOW THE COAST-DOWN, 2.000 s");
    const [machine] = scheduleOf(set).machines;
    expect(machine?.standing).toBe("above the rules");
    expect(machine?.proposal.warnings.some(({ code }) => code === "long delay")).toBe(true);
    const same = row("P-1", { coastDown: 3, tripDelay: 3 });
    expect([changeOf(same, "trip delay")?.isAllowed, scheduleOf(same).machines[0]?.standing]).toEqual([
      false,
      "above the rules",
    ]);
    const short = changeOf(row("P-1", { coastDown: 60, tripDelay: 3 }), "trip delay");
    expect([short?.does, short?.isAllowed]).toEqual(["keep", true]);
  });

  it("a trip that no level within the loop reaches is not proposed, and what is set is told", () => {
    const loop = "0 to 7 mm/s rms";
    const [bare] = scheduleOf(row("P-1", { loop })).machines;
    expect([bare?.standing, bare?.proposal.trip]).toEqual(["no trip proposed", null]);
    const set = row("P-1", { loop, trip: parseAmplitude("12 mm/s rms"), tripDelay: 4 });
    const trip = changeOf(set, "trip");
    expect([trip?.set, trip?.proposed, trip?.does, trip?.isAllowed]).toEqual([12, null, "none", false]);
    expect(trip?.text).toContain("WHAT IS SET IS ABOVE ALL THAT THE RULES ALLOW");
    expect(changeOf(set, "trip delay")?.set).toBe(4);
    expect(scheduleOf(set).machines[0]?.standing).toBe("above the rules");
    // a loop that starts above the alarm: at rest it stands already
    const high = changeOf(row("P-1", { loop: "6 to 12 mm/s rms" }), "alarm");
    expect([high?.does, high?.text]).toEqual(["none", expect.stringContaining("below the start of the loop")]);
  });

  it("a ceiling below alarm or baseline gives no trip", () => {
    for (const [ceiling, why] of [
      ["3 mm/s rms", "not above the proposed alarm"],
      ["1.5 mm/s rms", "at its baseline"],
    ] as const) {
      const [machine] = scheduleOf(row("P-1", { ceiling: parseAmplitude(ceiling) })).machines;
      expect([machine?.standing, machine?.proposal.trip]).toEqual(["no trip proposed", null]);
      expect(machine?.changes[0]?.text).toContain(why);
      expect(machine?.changes[0]?.allowed?.[1]).toBeCloseTo(Number.parseFloat(ceiling), 12);
    }
  });

  it("takes the hysteresis from the standard deviation that the list has", () => {
    // two deviations of 0.3 over the alarm of 2.2 + 5.1 / 4 = 3.475: 17.3 %, rounded up; common practice, no source
    const noisy = row("P-1", { baseline: { ...baseline, count: 14, deviation: parseAmplitude("0.3 mm/s rms") } });
    const [machine] = scheduleOf(noisy).machines;
    expect(machine?.proposal.hysteresis.percent).toBe(18);
    expect(machine?.proposal.hysteresis.reasons[0]?.text).toContain("two spreads");
    expect(machine?.proposal.trip?.reset.value).toBeCloseTo(8.5 * 0.82, 12);
    expect(machine?.proposal.warnings.map(({ text }) => text).join()).not.toContain("plays no part here");
    const wild = row("P-1", { baseline: { ...baseline, deviation: parseAmplitude("0.6 mm/s rms") } });
    const proposal = scheduleOf(wild).machines[0]?.proposal;
    expect([proposal?.hysteresis.percent, proposal?.hysteresis.reasons[0]?.text]).toEqual([
      20,
      expect.stringContaining("the most that is proposed"),
    ]);
    expect(proposal?.warnings.map(({ code }) => code)).toEqual(expect.arrayContaining(["alarm in scatter"]));
  });

  it("asks for the unit of setpoints on a shaft that nothing says", () => {
    const { baseline: _, ...bare } = row("T-1", {
      machine: { type: "steam turbine", power: "5 MW", speed: "3000 r/min", place: "shaft" },
    });
    expect(scheduleOf(bare).refused[0]?.code).toBe("missing-fact");
  });

  it("changes nothing by itself, and says so first", () => {
    expect(scheduleOf(row("P-1")).cautions[0]).toMatch(/changes nothing by itself/);
  });
});
