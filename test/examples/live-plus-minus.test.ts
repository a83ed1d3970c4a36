import { expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

it("the live pages refuse a reading with ±, and name the command that carries it", async () => {
  const path = "../../docs/site/live/without-plus-minus.js";
  const { withoutPlusMinus } = await import(/* @vite-ignore */ path);
  expect(withoutPlusMinus("4.9 mm/s rms")).toBe("4.9 mm/s rms");
  for (const text of ["4.9 ± 0.3 mm/s rms (k=2)", "4.9 +/- 0.3 mm/s rms"]) {
    const refused = refusalOf(() => withoutPlusMinus(text));
    expect(refused.code).toBe("syntax");
    expect(refused.expected).toContain('veladis judge "4.9 ± 0.3 mm/s rms (k=2)" --machine');
  }
});
