import { classify, limitsFor, type SchemeRef } from "veladis/severity";
import { describe, expect, it } from "vitest";

type Known = "published" | "memory";

/** A table of a site that knows each of its limits in its own way. */
const scheme = (ab: Known, bc: Known, cd: Known): SchemeRef =>
  ({
    id: "site",
    kind: "zones",
    standard: "site rule",
    edition: "1",
    classes: [
      {
        criteria: [
          {
            as: "mm/s rms",
            limits: { "A/B": 1, "B/C": 2, "C/D": 4 },
            source: { title: "site rule", provenance: ab },
            limitSources: {
              "B/C": { title: "site rule", provenance: bc },
              "C/D": { title: "site rule", provenance: cd },
            },
          },
        ],
      },
    ],
  }) as never;

describe("a judgement", () => {
  it("is verified only where every limit of its table was read in print", () => {
    const known = ["published", "memory"] as const;
    for (const ab of known) {
      for (const bc of known) {
        for (const cd of known) {
          const wanted = [ab, bc, cd].every((one) => one === "published");
          const table = scheme(ab, bc, cd);
          expect(classify("1.5 mm/s rms", { scheme: table }).verified).toBe(wanted);
          expect(limitsFor({ scheme: table })[0]?.verified).toBe(wanted);
        }
      }
    }
  });
});
