import { builtInSchemes, classify, parseMachine, type Scheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { type Fact, isNumberFact } from "../../src/severity/facts";
import { labelKey } from "../../src/severity/label";
import { writtenFact } from "../../src/severity/written-fact";
import { refusalOf } from "../refusals/refusal-of";

/** Every label of every built-in table, with its fact. */
const labels = [
  ...new Set(
    (builtInSchemes as readonly Scheme[])
      .flatMap(({ classes }) => classes)
      .flatMap(({ named, when, by }) => Object.entries({ ...named, ...by, ...when }))
      .filter(([fact]) => !isNumberFact(fact as Fact))
      .flatMap(([fact, value]) => [value].flat().map((label) => `${fact}\n${label}`)),
  ),
].map((one) => one.split("\n") as [Fact, string]);

describe("how a label is written, where it is missing", () => {
  it.each(labels)("%s %s is read as it is told", (fact, label) => {
    const [, words] = /^, in words such as (.*)$/.exec(writtenFact(fact, [label])) ?? [];
    if (words === undefined) expect(["type", "support", "place", "condition", "application"]).toContain(fact);
    else {
      const line = words.startsWith('"') ? (JSON.parse(words) as string) : words;
      expect(labelKey(String(parseMachine(`${line}, 90 kW`)[fact]))).toBe(labelKey(label));
    }
  });

  it("the part of a generating set is asked for with its words, which are then taken", () => {
    const machine = "diesel generating set 400 kW 1500 r/min";
    const by = { scheme: "lr-generating-sets" } as const;
    const { message } = refusalOf(() => classify("2 mm/s rms", { ...by, machine }));
    expect(message).toContain('the engine or the generator, in words such as "part generator"');
    for (const part of ["engine", "generator"])
      expect(classify("2 mm/s rms", { ...by, machine: `${machine} part ${part}` }).zone).toMatch(/^no damage/);
  });
});
