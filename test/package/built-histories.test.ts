import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { root } from "../examples/fences";

const manifest = JSON.parse(readFileSync(`${root}/package.json`, "utf8"));
const built = async (entry: string) => import(pathToFileURL(`${root}/${manifest.exports[entry].import.default}`).href);

describe("the built package", () => {
  it("knows a history that it made, so that one reading that comes in twice is one", async () => {
    const { convertAmplitude } = await built(".");
    const { parseUncertain, ratioOf, uncertaintyOf } = await built("./uncertainty");
    const { vectorDifference } = await built("./signal");
    const reading = parseUncertain("4.9 ± 0.3 mm/s rms (k=2)");
    expect(uncertaintyOf(ratioOf(reading, reading)).standard).toBeCloseTo(0, 12);
    expect(uncertaintyOf(vectorDifference(reading, reading, 180)).standard).toBeCloseTo(0.3, 12);
    // what was made here is handed on as it is, not checked and copied
    const moved = convertAmplitude(reading, "in/s rms");
    expect(convertAmplitude(moved, "mm/s pk").history[0]).toBe(reading.history[0]);
  });
});
