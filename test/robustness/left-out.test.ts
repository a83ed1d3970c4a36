import { VeladisError } from "veladis";
import { describe, expect, it } from "vitest";
import { type Call, calls } from "./calls";
import { placesIn } from "./hostile";
import { parameterNames } from "./parameter-names";

/**
 * What may be left out and is told by another code or place, by function and what is left out: a decimal comma that no
 * option explains is no number, a machine is asked for the fact that is missing first, an instance of mathjs is one or none.
 */
const others: Readonly<Record<string, string>> = {
  // of two ways to be called the other is meant
  format: "value",
  frequency: "options",
  parseAmplitude: "options",
  toSql: "options.expression",
  // the one key of a frequency
  hertz: "at.hertz",
  supportOf: "excitation.hertz",
  // a machine without facts
  classify: "options.machine",
  exactZone: "options.machine",
  proposeSetpoints: "request.machine",
  // the part that needs it
  combinedUncertainty: "reading",
  toolkit: "parts.units",
  // no answer, session or instance at all
  explain: "answer",
  completions: "session.variables",
  evaluateLine: "session.variables",
  registerAmplitudes: "math",
};

/** A call without one of its arguments, or without a key of an object among them. */
function without({ args }: Call, [first, key]: readonly (string | number)[]): unknown[] {
  const given = args();
  if (key === undefined) given[first as number] = undefined;
  else delete (given[first as number] as Record<string, unknown>)[key];
  return given;
}

/** The arguments of a call and the keys of the objects among them; elements of lists are no keys. */
const places = ({ args }: Call): (readonly (string | number)[])[] =>
  placesIn(args()).filter((path) => path.length === 1 || (path.length === 2 && typeof path[1] === "string"));

const list = Object.entries(calls).flatMap(([entry, of]) =>
  of.map((call) => [`${entry}: ${call.name}`, call] as const),
);

describe("what was left out is missing, and named", () => {
  it.each(list)("%s", async (_, call) => {
    for (const path of places(call)) {
      const parameter = parameterNames(call.name, call.args())?.[path[0] as number];
      const told = [parameter, ...path.slice(1)].join(".");
      if (others[call.name] !== undefined && told.startsWith(others[call.name] as string)) continue;
      try {
        await call.run(...without(call, path));
      } catch (error) {
        if (!VeladisError.is(error)) throw error;
        expect(`${told}: ${error.code}`).toMatch(/: missing-/);
        expect(`${told}: ${error.parameter}`).toBe(`${told}: ${parameter}`);
        if (path[1] !== undefined) expect([error.option, error.fact], error.message).toContain(path[1]);
      }
    }
  });
});
