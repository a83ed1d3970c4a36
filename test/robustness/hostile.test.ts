import { VeladisError } from "veladis";
import { describe, expect, it } from "vitest";
import { calls, entries } from "./calls";
import { hostile, notFiniteIn, placesIn, put } from "./hostile";

const all = Object.entries(calls).flatMap(([entry, list]) =>
  list.map((call) => [`${entry}: ${call.name}`, call] as const),
);

/** What is infinite by its meaning: a limit over a reading of zero, a reading over none at rest. */
const infinite = /^\.ratio = Infinity$|\.(margin\.(ratio|decibels)|history\.\d+\.value) = Infinity$/;
/** Places that take every hostile value; where there are more, each takes a few in turn, but for `VELADIS_HOSTILE=full`. */
const PLACES = process.env.VELADIS_HOSTILE === "full" ? Number.MAX_VALUE : 10;

/** The hostile values for a place. */
function valuesFor(place: number, places: number): [string, () => unknown][] {
  const step = Math.ceil(places / PLACES);
  return Object.entries(hostile).filter((_, i) => i % step === place % step);
}

describe("every public function is called", () => {
  it.each(Object.entries(entries))("%s", (entry, module) => {
    const called = new Set(calls[entry as keyof typeof calls].map(({ name }) => name.replace("new ", "")));
    const functions = Object.entries(module).filter(
      ([name, value]) => typeof value === "function" && name !== "VeladisError",
    );
    expect(functions.map(([name]) => name).filter((name) => !called.has(name))).toEqual([]);
  });
});

describe("what is asked rightly is answered in finite numbers", () => {
  it.each(all)("%s", async (_, { args, run }) => {
    expect(notFiniteIn(await run(...args()))).toEqual([]);
  });
});

describe("a hostile value anywhere in the arguments is answered in finite numbers or refused by the one error", () => {
  it.each(all)("%s", async (_, { args, run }) => {
    const wrong: string[] = [];
    const places = placesIn(args()).filter(({ length }) => length > 0);
    for (const [place, path] of places.entries()) {
      for (const [what, value] of valuesFor(place, places.length)) {
        const given = args();
        if (!put(given, path, value())) continue;
        try {
          const answer = await run(...given);
          const found = notFiniteIn(answer).filter((one) => !infinite.test(one));
          if (found.length > 0) wrong.push(`${what} at ${path.join(".")}: ${found[0]}`);
        } catch (error) {
          if (!(error instanceof VeladisError)) wrong.push(`${what} at ${path.join(".")}: ${error}`);
          else if (error.message.length > 4000) wrong.push(`${what} at ${path.join(".")}: a long message`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});
