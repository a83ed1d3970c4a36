import {
  classifier,
  classify,
  type confirmScheme,
  defineScheme,
  iso10816Part3Of2009,
  type Judgement,
  limitsFor,
  type Scheme,
  type SchemeRef,
  type Source,
} from "veladis/severity";
import { describe, expect, expectTypeOf, it } from "vitest";

describe("types", () => {
  it("the zone follows the kind of the scheme", () => {
    const machine = "group 1 rigid";
    const zones = classify("3 mm/s rms", { scheme: "iso-10816-3-2009", machine });
    expectTypeOf(zones.zone).toEqualTypeOf<"A" | "B" | "AB" | "C" | "D">();
    expectTypeOf(zones.limit.name).toEqualTypeOf<"A/B" | "B/C" | "C/D">();
    const pass = classify("1 mm/s rms", { scheme: "iec-60034-14-2003", machine: "280 mm grade A mounting free" });
    expectTypeOf(pass.zone).toEqualTypeOf<"pass" | "fail">();
    const fan = classify("1 mm/s rms", { scheme: "iso-14694-2003", machine: "rigid BV-3" });
    expectTypeOf(fan.zone).toEqualTypeOf<"start-up" | "service" | "alarm" | "shutdown">();
    // @ts-expect-error a pass is no zone
    expect(zones.zone === "pass").toBe(false);
  });

  it("ids and scheme objects are equal ways, wrong ids are refused", () => {
    const byObject = classify("3 mm/s rms", { scheme: iso10816Part3Of2009, machine: "group 1 rigid" });
    expectTypeOf(byObject).toEqualTypeOf<Judgement<"zones">>();
    expect(byObject).toEqual(classify("3 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }));
    // @ts-expect-error no such scheme
    expect(() => classify("3 mm/s rms", { scheme: "iso-10816-3-2010", machine: {} })).toThrow(/did you mean/);
    const loose: Scheme = iso10816Part3Of2009;
    expectTypeOf(classify("3 mm/s rms", { scheme: loose, machine: "group 1 rigid" }).zone).toEqualTypeOf<string>();
  });

  it("a confirmed scheme keeps its kind and id, and a confirmed source has page, name and day", () => {
    type Confirmed<S extends SchemeRef> = ReturnType<typeof confirmScheme<S>>;
    expectTypeOf<Confirmed<"iso-10816-7-2009-acceptance">["kind"]>().toEqualTypeOf<"acceptance">();
    expectTypeOf<Confirmed<"iso-10816-7-2009-acceptance">["id"]>().toEqualTypeOf<"iso-10816-7-2009-acceptance">();
    expectTypeOf<Confirmed<typeof iso10816Part3Of2009>["kind"]>().toEqualTypeOf<"zones">();
    expectTypeOf<Extract<Source, { provenance: "confirmed" }>["page"]>().toEqualTypeOf<string>();
    // @ts-expect-error confirmed by nobody
    const unsigned: Source = { title: "Site rule", provenance: "confirmed", page: "12" };
    expect(unsigned.by).toBeUndefined();
  });

  it("an own scheme keeps its kind, and kinds do not mix", () => {
    const source = { title: "Site rule", provenance: "printed", page: "p. 3" } as const;
    const own = defineScheme({
      id: "own",
      kind: "acceptance",
      standard: "Site rule",
      classes: [{ criteria: [{ as: "mm/s rms", limits: { acceptance: 2 }, source }] }],
    });
    expectTypeOf(own.kind).toEqualTypeOf<"acceptance">();
    expectTypeOf(classifier(own, {}, "mm/s rms")(1)).toEqualTypeOf<"pass" | "fail">();
    expectTypeOf(limitsFor({ scheme: own })[0]?.limits.acceptance?.name).toEqualTypeOf<"acceptance" | undefined>();
    expect(() =>
      defineScheme({
        id: "own",
        kind: "acceptance",
        standard: "Site rule",
        // @ts-expect-error a zone limit in an acceptance table
        classes: [{ criteria: [{ as: "mm/s rms", limits: { "A/B": 2 }, source }] }],
      }),
    ).toThrow(/allowed: acceptance/);
    expect(() =>
      defineScheme({
        id: "own",
        kind: "acceptance",
        standard: "Site rule",
        // @ts-expect-error no such unit
        classes: [{ criteria: [{ as: "mm/h rms", limits: { acceptance: 2 }, source }] }],
      }),
    ).toThrow(/unit/);
  });
});
