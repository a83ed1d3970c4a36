import { describe, expect, it } from "vitest";
import { sineFrequency } from "../../src/amplitude/index";
import { currentLoop, loopLimits, sensor } from "../../src/entries/sensor";
import { convert, convertAmplitude, hertz } from "../../src/index";
import { expectAgreement } from "../references/agreement";
import { practiceCheck } from "../references/common-practice";
import { levelReferencesInPrint } from "../references/decibel-levels";
import { sensorReferences } from "../references/sensor-scaling";
import { sineReferences } from "../references/sine-relations";
import { unitReferences } from "../references/units";

type IdOf<Table extends readonly { id: string }[]> = Table[number]["id"];

const at1Hz = { at: "1 Hz" } as const;
const at1cpm = { at: "1 cpm" } as const;

const computedUnits: Record<IdOf<typeof unitReferences>, () => number> = {
  A01: () => convert(1, "in pk", "m pk"),
  A02: () => convert(1, "ft pk", "m pk"),
  "A03.m": () => convert(1, "mil pp", "m pp"),
  "A03.mm": () => convert(1, "mil pp", "mm pp"),
  "A06.m": () => convert(1, "uin pk", "m pk"),
  "A06.um": () => convert(1, "uin pk", "um pk"),
  A07: () => convert(1, "g pk", "m/s2 pk"),
  "A08.in_s2": () => convert(1, "g pk", "in/s2 pk"),
  "A08.ft_s2": () => convert(1, "g pk", "ft/s2 pk"),
  A09: () => convert(1, "Gal pk", "m/s2 pk"),
  "A10.m_s": () => convert(1, "in/s pk", "m/s pk"),
  "A10.m_s2": () => convert(1, "in/s2 pk", "m/s2 pk"),
  A11: () => 2 * Math.PI * hertz("1 r/min"),
  A12: () => 2 * Math.PI * hertz("1000 r/min"),
  A13: () => hertz("60 r/min"),
  "A14.mm_s_pk": () => convert(0.15, "in/s pk", "mm/s pk"),
  "A14.in_s_pk": () => convert(3, "mm/s pk", "in/s pk"),
  A16: () => convert(1, "mil pp", "um pp"),
};

const computedSines: Record<IdOf<typeof sineReferences>, () => number> = {
  "C01.v_cm_s": () => convert(0.2, "cm pk", "cm/s pk", { at: { hertz: 1 / 0.15 } }),
  "C01.a_cm_s2": () => convert(0.2, "cm pk", "cm/s2 pk", { at: { hertz: 1 / 0.15 } }),
  "C02.T_s": () => 1 / hertz("10 Hz"),
  "C02.X_cm": () => convert(4.57, "m/s pk", "cm pk", { at: "10 Hz" }),
  "C02.a_m_s2": () => convert(4.57, "m/s pk", "m/s2 pk", { at: "10 Hz" }),
  C04: () => convert(1, "m pk", "m rms"),
  C05: () => convert(1.2, "g pk", "m/s pk", { at: "7100 cpm" }),
  "C07.a_m_s2": () => convert(0.4, "mm pk", "m/s2 pk", { at: "1000 Hz" }),
  "C07.v_m_s": () => convert(0.4, "mm pk", "m/s pk", { at: "1000 Hz" }),
  "C07.a_half_m_s2": () => convert(0.2, "mm pk", "m/s2 pk", { at: "1000 Hz" }),
  "C08.w_rad_s": () => 2 * Math.PI * sineFrequency("0.24 in pk", "225 ft/s2 pk"),
  "C08.f_Hz": () => sineFrequency("0.24 in pk", "225 ft/s2 pk"),
  "C08.v_ft_s": () => convert(0.24, "in pk", "ft/s pk", { at: { hertz: sineFrequency("0.24 in pk", "225 ft/s2 pk") } }),
  "C09.w_rad_s": () => 2 * Math.PI * hertz("80 Hz"),
  "C09.v_m_s": () => convert(0.025, "m pk", "m/s pk", { at: "80 Hz" }),
  "C09.a_m_s2": () => convert(0.025, "m pk", "m/s2 pk", { at: "80 Hz" }),
  C15: () => convert(0.462, "m rms", "g pk", { at: "0.38 Hz" }),
  "C16.X_mm": () => convert(0.5, "g pk", "mm pk", { at: "20 Hz" }),
  "C16.v_m_s": () => convert(0.5, "g pk", "m/s pk", { at: "20 Hz" }),
  C17: () => sineFrequency("100 m/s2 pk", "5 cm pk"),
  C19: () => convert(1, "g pk", "mil pp", at1cpm),
  C20: () => convert(1, "mil pp", "in/s pk", at1cpm),
  C21: () => convert(1, "g pk", "in/s pk", at1cpm),
  C23: () => convert(1, "in/s pk", "g pk", at1cpm),
  C24: () => convert(1, "m/s pk", "g pk", at1Hz),
  C26: () => convert(1, "in/s rms", "mil pp", at1cpm),
  C27: () => convert(1, "in/s rms", "in pp", { at: "60 Hz" }),
  C28: () => convert(1, "mil pp", "in/s pk", { at: "3600 r/min" }),
  "C30.rms": () => convert(1, "g pk", "g rms"),
  "C30.peak_per_rms": () => convert(1, "g rms", "g pk"),
  "C30.peak_per_avg": () => convert(1, "g avg", "g pk"),
  "C30.rms_per_avg": () => convert(1, "g avg", "g rms"),
  C32: () => convert(1.12, "mm/s rms", "mg rms", { at: "10 Hz" }),
  C33: () => sineFrequency("0.1 in pp", "10 g pk"),
  C35: () => convert(1, "in pp", "g pk", at1Hz),
  C36: () => convert(1, "g pk", "in/s pk", at1Hz),
  C37: () => convert(1, "g pk", "in pp", at1Hz),
  C39: () => convert(1, "in/s pk", "g pk", at1Hz),
  C40: () => convert(1, "in pp", "in/s pk", at1Hz),
  C42: () => convert(1, "g pk", "mm/s pk", at1Hz),
  C43: () => convert(1, "mm/s rms", "um pp", at1Hz),
  "C45.um1": () => convert(1.4, "mm/s rms", "um rms", { at: "10 Hz" }),
  "C45.um2": () => convert(2.8, "mm/s rms", "um rms", { at: "10 Hz" }),
  "C45.um3": () => convert(4.5, "mm/s rms", "um rms", { at: "10 Hz" }),
  "C46.um1": () => convert(2.3, "mm/s rms", "um rms", { at: "12.5 Hz" }),
  "C46.um2": () => convert(4.5, "mm/s rms", "um rms", { at: "12.5 Hz" }),
  "C46.um3": () => convert(7.1, "mm/s rms", "um rms", { at: "12.5 Hz" }),
  "C46.um4": () => convert(3.5, "mm/s rms", "um rms", { at: "12.5 Hz" }),
  "C46.um5": () => convert(7.1, "mm/s rms", "um rms", { at: "12.5 Hz" }),
  "C46.um6": () => convert(11, "mm/s rms", "um rms", { at: "12.5 Hz" }),
  "C47.um1": () => convert(2.3, "mm/s rms", "um rms", { at: "10 Hz" }),
  "C47.um2": () => convert(4.5, "mm/s rms", "um rms", { at: "10 Hz" }),
  "C47.um3": () => convert(7.1, "mm/s rms", "um rms", { at: "10 Hz" }),
  "C48.rpm": () => 60 * sineFrequency("2.3 in pk", "150 ft/s2 pk"),
  "C48.v_ft_s": () => convert(2.3, "in pk", "ft/s pk", { at: { hertz: sineFrequency("2.3 in pk", "150 ft/s2 pk") } }),
};

const computedLevels: Record<IdOf<typeof levelReferencesInPrint>, () => number> = {
  B01: () =>
    convert(100, "dB re ISO 1683 acceleration", "dB re 1e-6 m/s2") -
    convert(100, "dB re ISO 1683 acceleration", "dB re ANSI S1.8-1969 acceleration"),
  B03: () => 95 - convert(95, "dB re ISO 1683 velocity", "dB re ANSI S1.8-1969 velocity"),
  "B04.dB1": () => convert(100, "um/s2 rms", "dB re ISO 1683 acceleration"),
  "B04.dB2": () => convert(1000, "um/s2 rms", "dB re ISO 1683 acceleration"),
  B08: () => convert(84, "dB re 1e-6 in/s", "mm/s rms"),
  B09: () => convert(77, "dB re FTA velocity", "mm/s rms"),
  B11: () => convert(convert(0.076, "in/s pk", "in/s rms", { crestFactor: 4 }), "in/s rms", "dB re FTA velocity"),
  B12: () => convert(convert(0.003, "in/s pk", "in/s rms", { crestFactor: 4 }), "in/s rms", "dB re FTA velocity"),
  B24: () => convert(5, "g rms", "dB re 1 g"),
};

const computedSensors: Record<IdOf<typeof sensorReferences>, () => number> = {
  "J01.pct": () => currentLoop("0 to 25.4 mm/s rms").percent(10.6),
  J04: () => currentLoop("0 to 100 mm/s rms").current("40 mm/s rms").milliamperes,
  "J05.pct_13mA": () => currentLoop("0 to 25.4 mm/s rms").percent(13),
  J08: () => sensor("200 mV/mil").voltage("5 mil pp", "V pp").value,
  "J10.mV_per_um": () => sensor("200 mV/mil").sensitivity("mV/um"),
  "J10.V_per_mm": () => sensor("200 mV/mil").sensitivity("V/mm"),
  J11: () => sensor("100 mV/g").sensitivity("mV/(m/s2)"),
  J12: () => sensor("100 mV/g").voltage("1 g pk", "mV rms").value,
  J13: () => currentLoop("0 to 25.4 mm/s rms").reading(12).value,
  "J14.low_fault_mA": () => loopLimits.lowFault,
  "J14.high_fault_mA": () => loopLimits.highFault,
  "J14.range_mA1": () => loopLimits.lowest,
  "J14.range_mA2": () => loopLimits.highest,
};

describe("values in print", () => {
  it.each(unitReferences)("$id $statement ($source, $provenance)", (reference) =>
    expectAgreement(reference, computedUnits[reference.id]()),
  );
  it.each(sineReferences)("$id $statement ($source, $provenance)", (reference) =>
    expectAgreement(reference, computedSines[reference.id]()),
  );
  it.each(levelReferencesInPrint)("$id $statement ($source, $provenance)", (reference) =>
    expectAgreement(reference, computedLevels[reference.id]()),
  );
  it.each(sensorReferences)("$id $statement ($source, $provenance)", (reference) =>
    expectAgreement(reference, computedSensors[reference.id]()),
  );

  it("keeps at least nine misprints as negative tests", () => {
    const all = [...unitReferences, ...sineReferences, ...levelReferencesInPrint, ...sensorReferences];
    expect(all.filter(({ agrees }) => !agrees).length).toBeGreaterThanOrEqual(9);
  });
});

describe("common practice, no source", () => {
  it("a velocity at a shaft speed is a displacement and an acceleration", () => {
    const { velocity, speed, displacement, acceleration } = practiceCheck;
    const at = `${speed} r/min` as const;
    expect(convert(velocity, "in/s pk", "mil pp", { at })).toBeCloseTo(displacement.mils, displacement.digits);
    expect(convert(velocity, "in/s pk", "g pk", { at })).toBeCloseTo(acceleration.g, acceleration.digits);
  });

  it("1 in/s peak is 17.96 mm/s RMS", () => {
    expect(convert(1, "in/s pk", "mm/s rms")).toBeCloseTo(17.96, 2);
  });

  it("the data path gives the same answers with what was assumed", () => {
    expect(convertAmplitude(practiceCheck.known, "mil pp")).toMatchObject({
      assumed: ["one-frequency"],
      hertz: practiceCheck.speed / 60,
    });
    expect(convertAmplitude("1 in/s pk", "mm/s rms")).toMatchObject({ assumed: ["sine"], hertz: undefined });
  });
});
