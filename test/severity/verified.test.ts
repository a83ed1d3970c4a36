import { classify, limitsFor } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { inPrint, recalled, siteRule, zonesIn } from "./own-scheme";

describe("a judgement", () => {
  it("is verified only where every limit of its table was read in print", () => {
    const known = [inPrint, recalled];
    for (const ab of known) {
      for (const bc of known) {
        for (const cd of known) {
          const wanted = [ab, bc, cd].every((one) => one === inPrint);
          const zones = zonesIn("mm/s rms", { "A/B": 1, "B/C": 2, "C/D": 4 }, ab);
          const table = siteRule("known", {
            classes: [{ criteria: [{ ...zones, limitSources: { "B/C": bc, "C/D": cd } }] }],
          });
          expect(classify("1.5 mm/s rms", { scheme: table }).verified).toBe(wanted);
          expect(limitsFor({ scheme: table })[0]?.verified).toBe(wanted);
        }
      }
    }
  });
});
