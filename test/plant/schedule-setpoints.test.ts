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
