/** Two copies of the built library in one process: an ES module and CommonJS. Needs `dist/`. */
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { root } from "../examples/fences";

const { VeladisError: Required, convert: requiredConvert } = createRequire(import.meta.url)(`${root}/dist/index.cjs`);
const { VeladisError: Imported, convert } = await import(`${root}/dist/index.js`);

function thrownBy(act: () => unknown): unknown {
  try {
    act();
  } catch (error) {
    return error;
  }
  throw new Error("nothing was thrown");
}

describe("an error of one copy", () => {
  const ofModule = thrownBy(() => convert(-1, "g rms", "g rms"));
  const ofRequire = thrownBy(() => requiredConvert(-1, "g rms", "g rms"));

  it("is an instance of the class of the other", () => {
    expect(Imported).not.toBe(Required);
    expect([ofModule instanceof Required, ofRequire instanceof Imported]).toEqual([true, true]);
    expect([Required.is(ofModule), Imported.is(ofRequire)]).toEqual([true, true]);
  });

  it("is data that both agree on", () => {
    expect(JSON.parse(JSON.stringify(ofModule))).toEqual(JSON.parse(JSON.stringify(ofRequire)));
  });
});
