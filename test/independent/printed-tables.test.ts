import { classify, judge } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { printedDifferences } from "./printed-differences";

/**
 * Sources: the published tables as keyed by hand in test/references/severity-limits.ts, with the standard and table
 * beside each; units, sine relations and pi by the sources named in printed-judge.ts. The judge is of whole numbers
 * and shares no code with the library. `node bench/printed-tables.mjs` judges 100,000.
 */
describe("random readings against the printed tables", () => {
  it("5,000 judgements by a table that is named or that a nameplate asks for: no difference", () => {
    expect(printedDifferences({ classify, judge }, 5000)).toEqual([]);
  });
});
