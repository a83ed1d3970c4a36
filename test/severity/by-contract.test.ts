/** Tables that an order has to name: acceptance tests by API and the like. They are never chosen by themselves. */
import {
  builtInSchemes,
  classify,
  judge,
  type MachineType,
  machineTypes,
  type Scheme,
  schemesFor,
  selectSchemes,
} from "veladis/severity";
import { describe, expect, it } from "vitest";

const contract = (builtInSchemes as readonly Scheme[]).filter(({ byContract }) => byContract);
const types = Object.keys(machineTypes) as MachineType[];

describe("tables that an order has to name", () => {
  it("are acceptance tests of new machines, for kinds of machine that they name", () => {
    expect(contract).toHaveLength(11);
    for (const one of contract) {
      expect(one.kind, one.id).toBe("acceptance");
      expect(one.within?.condition, one.id).toBe("new");
      expect(one.machines, one.id).toHaveLength(1);
      // what the page told is told on: by whom, and that the reader has to check it
      for (const { source } of one.classes.flatMap(({ criteria }) => criteria))
        expect(source.provenance, one.id).toMatch(/^(reported|memory)$/);
    }
  });

  it.each(types)("never judge a %s by themselves, new or in service, on the housing or the shaft", (type) => {
    const ids = contract.map(({ id }) => id);
    for (const condition of ["new", "in service", undefined] as const) {
      for (const place of ["housing", "shaft"] as const) {
        const machine = { type, place, speed: "3000 r/min", ...(condition && { condition }) } as const;
        try {
          for (const { scheme } of schemesFor(machine)) expect(ids).not.toContain(scheme.id);
        } catch (error) {
          expect((error as Error).name).toBe("VeladisError");
        }
      }
    }
  });

  it("stand behind all others in a selection, and say that they go by name only", () => {
    for (const { type } of types.map((one) => ({ type: one }))) {
      const { candidates } = selectSchemes({ type, condition: "new" });
      const first = candidates.findIndex(({ byContract }) => byContract);
      if (first >= 0) expect(candidates.slice(first).every(({ byContract }) => byContract)).toBe(true);
    }
  });

  it("leave a new steam turbine to the zones of its standard, and are named beside", () => {
    const { kind, scheme, setAside } = judge("3.5 mm/s rms", "steam turbine 60 MW 3000 r/min housing new");
    expect([kind, scheme]).toEqual(["zones", "iso-20816-2-2017"]);
    expect(setAside).toEqual([
      "condition new: no acceptance limits for such a machine (by name, where the order has it: api-611); judged as in service",
    ]);
  });

  it("judge where they are named", () => {
    // API 673 3rd ed.: unfiltered < 2.8 mm/s RMS
    const fan = { scheme: "api-673-3rd", machine: "fan 400 kW new content overall units metric" } as const;
    expect(classify("2.7 mm/s rms", fan).zone).toBe("pass");
    expect(classify("2.9 mm/s rms", fan).zone).toBe("fail");
    expect(judge("2.9 mm/s rms", "fan 400 kW new", { schemes: ["api-673-3rd"] }).zone).toBe("fail");
    // the columns are not in ratio 25.4: 0.11 in/s is 2.794 mm/s, and the lower of both is taken while none is named
    expect(judge("2.797 mm/s rms", "fan 400 kW new", { schemes: ["api-673-3rd"] }).zone).toBe("fail");
    expect(() => classify("2.7 mm/s rms", { ...fan, machine: "fan 400 kW in service" })).toThrow(
      /new, received "in service"/,
    );
  });

  it("hold a dry screw compressor to the lower limit while its bearings are not told", () => {
    // API 619 5th ed., Tables 1 and 2: 5.0 mm/s dry with hydrodynamic bearings, else 8.0
    const told = judge("6 mm/s rms", "screw compressor 250 kW new units metric", { schemes: ["api-619-5th"] });
    expect(told.zone).toBe("fail");
    expect(told.assumedFacts.join()).toMatch(/class dry with hydrodynamic bearings: not given/);
    const machine = 'screw compressor 250 kW new units metric class "oil-flooded with rolling bearings"';
    expect(judge("6 mm/s rms", machine, { schemes: ["api-619-5th"] }).zone).toBe("pass");
  });

  it("hold a non-synchronous frequency of a special-purpose turbine to 20 % of the limit", () => {
    // API 612 7th ed., 16.3.3.3, as quoted on a web page; another page's 120 % would let 1.2 mil pass
    const turbine = (content: string) => ({
      scheme: "api-612-7th-shaft" as const,
      machine: `steam turbine 12000 r/min new shaft content ${content}`,
    });
    expect(classify("0.9 mil pp", turbine("overall")).zone).toBe("pass");
    expect(classify("0.21 mil pp", turbine("nonsynchronous")).zone).toBe("fail");
    expect(classify("0.19 mil pp", turbine("nonsynchronous")).zone).toBe("pass");
  });

  it("API 672 stops at 40 um where API 617 stops at 25.4", () => {
    const at = (scheme: "api-672-5th-shaft" | "api-617-8th-shaft", units: string) =>
      classify("33 um pp", { scheme, machine: `compressor 6838 r/min new shaft ${units}` }).zone;
    expect([at("api-672-5th-shaft", "units metric"), at("api-617-8th-shaft", "")]).toEqual(["pass", "fail"]);
  });

  it("have no limit for a discrete frequency where the scan lost the sign", () => {
    const machine = 'pump 1500 r/min new shaft class "vertically suspended" content discrete units metric';
    expect(() => classify("20 um pp", { scheme: "api-610-table-9-shaft", machine })).toThrow(/overall/);
  });
});
