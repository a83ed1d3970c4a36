import { describe, expect, it } from "vitest";
import { isInstrumented } from "./is-instrumented";
import { type Cases, composed, pageOf, type Refusal, refusalsOf } from "./refused";

/**
 * Holds all that a floor says when it refuses against the page kept in `pages/`, and the cases against the sources:
 * a refusal that no case reaches is one that nobody has read.
 */
export function holdWording(floor: string, cases: Cases): void {
  describe(`refusals of ${floor}`, () => {
    // within a test: what runs before all tests belongs to none of them, and mutation testing would not run it
    let asked: Promise<Refusal[]> | undefined;
    const collected = () => {
      asked ??= refusalsOf(cases);
      return asked;
    };

    it("are worded as on their page", async () => {
      await expect(pageOf(await collected())).toMatchFileSnapshot(`../refusals/pages/${floor}.txt`);
    });

    it("say in their message what their parts say", async () => {
      for (const { error } of await collected()) expect(error.message).toBe(composed(error));
    });

    // code under mutation holds each expression several times
    it.skipIf(isInstrumented(floor))("come from every place in the sources that refuses", async () => {
      const { unreached } = await import("./sites");
      expect(unreached(floor, await collected())).toEqual([]);
    });
  });
}
