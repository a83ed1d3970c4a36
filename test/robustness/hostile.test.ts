import { VeladisError } from "veladis";
import { describe, expect, it } from "vitest";
import { calls, entries } from "./calls";
import { hostile, notFiniteIn, placesIn, put } from "./hostile";

const all = Object.entries(calls).flatMap(([entry, list]) =>
  list.map((call) => [`${entry}: ${call.name}`, call] as const),
);

/** Functions that print what they are given: the words of their user, whatever they are. */
const printing = new Set(["assumedText", "conditionText", "zoneWord", "sheetHtml", "sheetJson", "sheetMarkdown"]);
/** What takes hundreds of milliseconds a call: held by `test/protection/junk.test.ts` alone. */
const slow = new Set(["shockImmunity", "setpointSheet", "benchPlan", "severityBar"]);
/** Entries whose functions hold for every hostile value. */
const held = ["veladis/signal", "veladis/sql", "veladis/chart"];

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
  const calm = all.filter(
    ([entry, { name }]) => held.includes(entry.split(":")[0] as string) && name !== "format" && !slow.has(name),
  );
  it.each(calm)("%s", async (_, { name, args, run }) => {
    const wrong: string[] = [];
    for (const path of placesIn(args())) {
      if (path.length === 0) continue;
      for (const [what, value] of Object.entries(hostile)) {
        const given = args();
        if (!put(given, path, value())) continue;
        try {
          const answer = await run(...given);
          const found = printing.has(name) || typeof answer === "string" ? [] : notFiniteIn(answer);
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
