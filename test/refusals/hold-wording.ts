import { beforeAll, describe, expect, it } from "vitest";
import { type Cases, composed, pageOf, type Refusal, refusalsOf } from "./refused";
import { isInstrumented, unreached } from "./sites";

/**
 * Holds all that a floor says when it refuses against the page kept in `pages/`, and the cases against the sources:
 * a refusal that no case reaches is one that nobody has read.
 */
export function holdWording(floor: string, cases: Cases): void {
  describe(`refusals of ${floor}`, () => {
    let refusals: Refusal[] = [];
    beforeAll(async () => {
      refusals = await refusalsOf(cases);
    });

    it("are worded as on their page", async () => {
      await expect(pageOf(refusals)).toMatchFileSnapshot(`../refusals/pages/${floor}.txt`);
    });

    it("say in their message what their parts say", () => {
      for (const { error } of refusals) expect(error.message).toBe(composed(error));
    });

    // code under mutation holds each expression several times
    it.skipIf(isInstrumented(floor))("come from every place in the sources that refuses", () => {
      expect(unreached(floor, refusals)).toEqual([]);
    });
  });
}
