import { builtInSchemes, confirmableLimits, limitsFor, type Scheme, type SchemeId, schemeById } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { editionText, inListOrder } from "../../src/severity/index";
import { pumpCeilings } from "../references/severity-limits";

const limitOf = (scheme: SchemeId, machine: string, name: string) => {
  const limit = limitsFor({ scheme, machine })[0]?.limits[name as "C/D"];
  if (limit === undefined) throw new Error(`${scheme} has no ${name} for ${machine}`);
  return limit;
};

describe("where voices differ, the lower limit judges and its source names both", () => {
  // 6,5: "Vibration grades to ISO", one-page extract, scribd.com/document/612569992
  // 6,6: course handbook Engenharia de Confiabilidade, section 4.7, which names BSI/ISO 10816-7, 2009
  it("ISO 10816-7, category I up to 200 kW, C/D: 6.5 in the extract, 6.6 in the course", () => {
    const limit = limitOf("iso-10816-7-2009", "category I 200 kW", "C/D");
    expect(limit.value).toBe(6.5);
    expect(limit.provenance).toBe("reported");
    expect(limit.source.page).toContain("612569992");
    expect(limit.source.disputed).toMatch(
      /extract prints 6\.5.*Engenharia de Confiabilidade, section 4\.7, prints 6\.6 \(https.*curso-analise/,
    );
    expect(limit.source.disputed).toMatch(/1\.25 x 6\.6 = 8\.3, and 1\.25 x 6\.5 = 8\.1/);
  });

  // the rule of 1.25: course handbook, section 4.7; the ceilings themselves are from memory
  it("ISO 10816-7: each ceiling is 1.25 times its limit, to one decimal, but for that one", () => {
    const rounded = (value: number) => Math.round((value + 1e-9) * 10) / 10;
    for (const [machine, alarm, trip] of pumpCeilings) {
      expect(rounded(1.25 * limitOf("iso-10816-7-2009", machine, "B/C").value), machine).toBe(alarm);
      const upper = limitOf("iso-10816-7-2009", machine, "C/D").value;
      expect(rounded(1.25 * (upper === 6.5 ? 6.6 : upper)), machine).toBe(trip);
    }
    expect(rounded(1.25 * 6.5)).toBe(8.1);
  });

  // 4.60: vibratechnica.com/vibrationseverity.html, Table 2 (based on ISO 3945); 4.5: preferred numbers, from memory
  it("ISO 3945, rigid, B/C: 4.60 on a page, 4.5 as a step of the preferred numbers", () => {
    const limit = limitOf("iso-3945-1985", "rigid", "B/C");
    expect(limit.value).toBe(4.5);
    expect(limit.provenance).toBe("memory");
    expect(limit.source.disputed).toMatch(/vibratechnica\.com\/vibrationseverity\.html prints 4\.60.*memory says 4\.5/);
  });

  // <=200 and >200 kW: course handbook, section 4.7; <200 and >200: the extract
  it("ISO 10816-7: 200 kW has the limits of the lower row", () => {
    expect(limitOf("iso-10816-7-2009", "category II 200 kW", "B/C").value).toBe(5.1);
    expect(limitOf("iso-10816-7-2009", "category II 201 kW", "B/C").value).toBe(6.1);
  });

  // Siemens entry 38716895: 132<=H<=280; VASCAT manual CTT52: 132<H<=280
  it("IEC 60034-14: a shaft height of 132 mm, which stands in two rows of one excerpt, has the lower limits", () => {
    expect(limitOf("iec-60034-14-2003", "grade A mounting free 132 mm", "acceptance").value).toBe(25);
  });
});

describe("what a check sheet is told of disputes", () => {
  const all = builtInSchemes.flatMap((scheme) => confirmableLimits(scheme.id));

  it("ISO 10816-7, category I up to 200 kW, C/D: 6.5 against 6.6, and no other limit of that table", () => {
    const disputed = confirmableLimits("iso-10816-7-2009").filter((one) => one.disputed !== undefined);
    expect(disputed.map(({ row, limit, shipped }) => `${row}, ${limit} ${shipped}`)).toEqual([
      "category I, power up to 200 kW, C/D 6.5",
    ]);
    expect(disputed[0]?.disputed).toMatch(/prints 6\.5.*prints 6\.6/);
  });

  it("of no limit by a word of its note: it is told in a field of its own", () => {
    const told = all.filter(({ source }) =>
      /^(?:sources conflict|the table contradicts itself)|lower is shipped/.test(source.note ?? ""),
    );
    expect(told).toEqual([]);
  });

  it("every limit of which the lower is shipped", () => {
    const lower = all.filter(({ source }) => /lower is shipped/.test(source.disputed ?? ""));
    expect(lower.length).toBeGreaterThan(3);
    expect([...new Set(lower.map(({ scheme }) => scheme))].sort()).toEqual([
      "ansi-amca-204-05",
      "api-610-11th-shaft",
      "iso-10816-7-2009",
      "iso-14694-2003",
      "iso-20816-2-2017-shaft",
      "iso-3945-1985",
      "lr-generating-sets",
    ]);
  });
});

describe("lists of schemes", () => {
  it("go by standard, part and edition: 10816-3 of 1998, of 2009, then 10816-21", () => {
    const ids = inListOrder(builtInSchemes).map(({ id }) => id);
    const at = (id: SchemeId) => ids.indexOf(id);
    expect(at("iso-10816-3-1998")).toBeLessThan(at("iso-10816-3-2009"));
    expect(at("iso-10816-3-2009")).toBeLessThan(at("iso-10816-7-2009"));
    expect(at("iso-10816-7-2009")).toBeLessThan(at("iso-10816-21-2015"));
    expect(at("iso-2372-1974")).toBeLessThan(at("iso-10816-2-2009"));
    expect([...ids].sort()).toEqual(builtInSchemes.map(({ id }) => id).sort());
  });

  it("name an edition that is not known in words", () => {
    expect(editionText(schemeById("api-541"))).toBe("API 541, edition not stated");
    expect(editionText(schemeById("iso-10816-7-2009"))).toBe("ISO 10816-7:2009");
  });
});

describe("limits count as read under one edition", () => {
  it("no page stands behind the same standard in two editions", () => {
    const editions = new Map<string, Set<string>>();
    for (const { standard, edition, classes } of builtInSchemes as readonly Scheme[]) {
      for (const { source, limitSources } of classes.flatMap(({ criteria }) => criteria)) {
        for (const page of [source, ...Object.values(limitSources ?? {})].map((one) => one?.page)) {
          if (page === undefined) continue;
          const key = `${standard}: ${page}`;
          editions.set(key, (editions.get(key) ?? new Set()).add(edition));
        }
      }
    }
    expect([...editions].filter(([, under]) => under.size > 1)).toEqual([]);
  });

  it("ISO 10816-3: the makers' manuals for 1998, the course that names 2009 for 2009", () => {
    const old = limitOf("iso-10816-3-1998", "group 1 rigid", "B/C");
    const later = limitOf("iso-10816-3-2009", "group 1 rigid", "B/C");
    expect([old.value, old.provenance]).toEqual([4.5, "quoted"]);
    expect(old.source.note).toMatch(/3BFP 000 050 R0101 REV E.*without edition; counted for 1998 alone/);
    expect([later.value, later.provenance]).toEqual([4.5, "reported"]);
    expect(later.source.note).toMatch(/names BSI\/ISO 10816-3, 2009/);
  });
});
