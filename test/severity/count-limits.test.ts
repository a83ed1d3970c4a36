import { builtInSchemes, countLimits, defineScheme, type SchemeId, schemeById } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { lettersCounted, severityLimits } from "../references/severity-limits";

const read = { title: "Site rule 12, invented", provenance: "printed", page: "p. 3" } as const;
const told = { title: "Site rule 12, invented", provenance: "memory" } as const;

describe("the limits of a table", () => {
  // of tables whose rows in the copy keyed by hand repeat no criterion
  it.each(["iso-10816-3-2009", "iec-60034-14-2003", "iso-2372-1974", "iso-10816-5-2000", "iso-2373-1974"] as const)(
    "%s: are counted as in the copy keyed by hand",
    (id) => {
      const { schemes, ...counts } = countLimits([schemeById(id)]);
      expect(counts).toMatchObject(lettersCounted(severityLimits[id] ?? []));
      expect(schemes).toEqual([{ scheme: schemeById(id), ...counts }]);
    },
  );

  it("are summed over several tables, and over all built-in ones when none is named", () => {
    // counted in the copy keyed by hand: 24, 33 and 12
    const ids: SchemeId[] = ["iso-10816-3-2009", "iec-60034-14-2003", "iso-2372-1974"];
    expect(countLimits(ids.map(schemeById))).toMatchObject({ limits: 24 + 33 + 12 });
    const all = countLimits();
    expect(all.schemes.map(({ scheme }) => scheme)).toEqual(builtInSchemes);
    for (const part of ["limits", "memory", "practice", "reported", "quoted", "printed", "confirmed"] as const) {
      expect(all[part], part).toBe(all.schemes.reduce((sum, one) => sum + one[part], 0));
    }
  });

  it("count by their own source where they have one, with two ceilings, and not where there is none", () => {
    const scheme = defineScheme({
      id: "rule-12",
      kind: "zones",
      standard: "Site rule 12, invented",
      classes: [
        {
          criteria: [
            {
              as: "mm/s rms",
              limits: { "A/B": null, "B/C": 4, "C/D": 8 },
              source: told,
              limitSources: { "C/D": read },
            },
            {
              as: "um pp",
              limits: { "B/C": 80, "C/D": 160 },
              source: read,
              ceilings: { alarm: 90, trip: 170, source: told },
            },
          ],
        },
      ],
    });
    const counts = countLimits([scheme]);
    expect(counts).toMatchObject({ limits: 6, printed: 1 + 2, memory: 1 + 2 });
    // a scheme of one's own is checked once: it is no copy that is counted
    expect(counts.schemes[0]?.scheme).toBe(scheme);
  });
});
