import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convertAmplitude } from "../../src/amplitude/index";
import { bandResponse } from "../../src/device/index";
import { type BenchRound, benchRound, dueChecks, type Plant } from "../../src/plant/index";
import { levelText } from "../../src/plant/level-text";
import { parseAmplitude } from "../../src/reading/index";
import { type Shaker, shakerReach } from "../../src/verification/index";
import { machine, plantOf } from "./small-plant";

const at = parseAmplitude;
const on = "2026-12-01";
const wide = {
  lowest: "8 Hz",
  highest: "3 kHz",
  displacement: "5 mm pp",
  acceleration: "6 g pk",
} as const satisfies Shaker;
const band = { lowest: "10 Hz", highest: "1000 Hz" } as const;

function roundOf(plant: Plant, shaker: Shaker, more = {}): BenchRound {
  return benchRound(plant, dueChecks(plant, { on }), shaker, { on, ...more });
}

/** Settings in short: level, frequency, tags. */
function short({ settings }: BenchRound): string[] {
  return settings.map(({ level, devices }) => `${levelText(level)}: ${devices.map(({ tag }) => tag).join(" ")}`);
}

describe("a round on the bench (levels between alarm and trip: common practice, no source)", () => {
  it("keeps the tolerance away from alarm and trip; where that leaves no room, the middle", () => {
    // common practice, no source; 5.6 + 10 % is 6.16, 9 - 10 % is 8.1
    const levelOf = (more: object) =>
      roundOf(plantOf(machine("LU-01", 2, { band, ...more })), wide).settings[0]?.level.value;
    const level = levelOf({ alarm: at("5.6 mm/s rms"), trip: at("9 mm/s rms"), tolerance: "10 %" });
    expect(level).toBeGreaterThanOrEqual(6.16);
    expect(level).toBeLessThanOrEqual(8.1);
    expect(levelOf({ alarm: at("8.8 mm/s rms"), trip: at("9 mm/s rms"), tolerance: "10 %" })).toBeCloseTo(8.9, 9);
    // without one 5 %, in whatever unit it is told
    expect(levelOf({ alarm: at("8.6 mm/s rms"), trip: at("9.6 mm/s rms") })).toBeGreaterThanOrEqual(8.6 * 1.05);
    const decibels = levelOf({ alarm: at("6 mm/s rms"), trip: at("9 mm/s rms"), tolerance: "1 dB" });
    expect(decibels).toBeGreaterThanOrEqual(6 * 10 ** (1 / 20));
    expect(
      levelOf({ alarm: at("6 mm/s rms"), trip: at("9 mm/s rms"), tolerance: "1 mm/s rms" }),
    ).toBeGreaterThanOrEqual(7);
  });

  it("one setting serves devices of several units whose alarm and trip enclose it", () => {
    const plant = plantOf(
      machine("LU-01", 2, { band }),
      machine("LU-02", 3, { band, alarm: at("7 mm/s rms"), trip: at("11 mm/s rms") }),
      // 60 to 90 um pp at 79.4 Hz are pi * 79.4 / sqrt(2) / 1000 times that: 10.6 to 15.9 mm/s rms
      machine("WT-01", 4, { band, alarm: at("60 um pp"), trip: at("90 um pp") }),
    );
    const round = roundOf(plant, wide);
    expect(short(round)).toEqual(["8 mm/s rms at 79.4 Hz: LU-01 LU-02", "13 mm/s rms at 79.4 Hz: WT-01"]);
    const [, second] = round.settings;
    // 13 mm/s rms at 79.4 Hz: 13 * sqrt(2) / (pi * 79.4) mm = 73.70 um pp
    expect(second?.devices[0]?.known.value).toBeCloseTo((13000 * Math.SQRT2) / (Math.PI * 79.4), 6);
    expect(second?.devices[0]).toMatchObject({
      number: "WT-01-2026-12-01",
      known: { unit: "um", detector: "pp" },
      isBandKnown: true,
    });
    expect(round.left).toEqual([]);
  });

  it("a device whose band is flat elsewhere has a frequency of its own", () => {
    const plant = plantOf(
      machine("LU-01", 2, { band }),
      machine("GB-01", 3, { band: { lowest: "1 kHz", highest: "10 kHz" }, alarm: at("4 g rms"), trip: at("6 g rms") }),
    );
    const wider = { ...wide, highest: "10 kHz", acceleration: "20 g pk" } as const;
    expect(short(roundOf(plant, wider))).toEqual(["7 mm/s rms at 79.4 Hz: LU-01", "2.4 mm/s rms at 3200 Hz: GB-01"]);
    const round = roundOf(plant, wide);
    expect(short(round)).toEqual(["7 mm/s rms at 79.4 Hz: LU-01"]);
    expect(round.left).toMatchObject([{ tag: "GB-01", why: expect.stringContaining("nominally reads") }]);
  });

  it("a shaker of one level serves those that enclose it; the others are told why not", () => {
    const plant = plantOf(machine("A", 2, {}), machine("B", 3, { alarm: at("11 mm/s rms"), trip: at("14 mm/s rms") }));
    const round = roundOf(plant, { lowest: "159.2 Hz", highest: "159.2 Hz", level: "7.1 mm/s rms" });
    expect(short(round)).toEqual(["7.1 mm/s rms at 159.2 Hz: A"]);
    expect(round.left).toEqual([
      {
        ...{ tag: "B", line: 3 },
        why: "the one level of the shaker, 7.10 mm/s rms, is not in 11.6 to 13.3 mm/s rms at 159 Hz",
        mend: "take a shaker whose level can be set, or inject a signal by a plan of its own",
      },
    ]);
  });

  it("neither setpoint, a loop that ends below, a mass that is too much", () => {
    const plant = plantOf(
      machine("NONE", 2, { alarm: undefined, trip: undefined, sensor: "100 mV/g" }),
      machine("LOOP", 3, { loop: "0 to 5 mm/s rms" }),
      machine("TRIP", 4, { alarm: undefined }),
    );
    const round = roundOf(plant, wide);
    expect(short(round)).toEqual(["7 mm/s rms at 79.4 Hz: TRIP"]);
    expect(round.left.map(({ tag, why }) => `${tag}: ${why}`)).toEqual([
      "NONE: neither alarm nor trip is in the list",
      "LOOP: its loop ends at 5 mm/s rms, below 5.6 mm/s rms",
    ]);
    const heavy = roundOf(plant, { ...wide, payload: "0.1 kg" }, { load: "0.5 kg" });
    expect([heavy.settings, heavy.left.length]).toEqual([[], 3]);
  });

  it("every device stands once, in a setting that suits it and that the shaker gives", () => {
    const shakers = fc.constantFrom<Shaker>(
      wide,
      { ...wide, resolution: "0.5 mm/s rms" },
      {
        lowest: "15.92 Hz",
        highest: "159.2 Hz",
        frequencies: ["15.92 Hz", "79.6 Hz", "159.2 Hz"],
        acceleration: "1 g pk",
      },
      { lowest: "159.2 Hz", highest: "159.2 Hz", level: "10 mm/s rms" },
    );
    const device = fc.record({
      alarm: fc.integer({ min: 10, max: 150 }),
      more: fc.integer({ min: 0, max: 80 }),
      unit: fc.constantFrom("mm/s rms", "mm/s pk", "um pp"),
      banded: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(device, { maxLength: 15 }), shakers, (devices, shaker) => {
        const plant = plantOf(
          ...devices.map(({ alarm, more, unit, banded }, i) =>
            machine(`M${i}`, i + 2, {
              ...(banded && { band }),
              alarm: at(`${alarm / 10} ${unit}`),
              trip: at(`${(alarm + more) / 10} ${unit}`),
            }),
          ),
        );
        const round = roundOf(plant, shaker);
        const tags = [
          ...round.settings.flatMap((one) => one.devices.map(({ tag }) => tag)),
          ...round.left.map(({ tag }) => tag),
        ];
        expect([...tags].sort()).toEqual(plant.machines.map(({ tag }) => tag).sort());
        for (const { level, hertz, devices: served } of round.settings) {
          expect(shakerReach(level, shaker, "0 kg")).toMatchObject({ possible: true });
          for (const { tag, known } of served) {
            const one = plant.machines.find((each) => each.tag === tag);
            expect(known.value).toBeGreaterThanOrEqual((one?.alarm?.value as number) * (1 - 1e-6));
            expect(known.value).toBeLessThanOrEqual((one?.trip?.value as number) * (1 + 1e-6));
            expect(convertAmplitude(known, "mm/s rms").value).toBeCloseTo(level.value, 9);
            if (one?.band !== undefined) expect(bandResponse({ hertz }, one.band)).toBeGreaterThanOrEqual(0.98);
          }
        }
      }),
    );
  });
});
