import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { pages } from "../src/cli/commands/pages";
import { filesBelow, root } from "./examples/fences";
import { formsOf, publicWords, type Used, wordsOf } from "./surface/public-words";

const guide = readFileSync(`${root}/docs/guides/vocabulary.md`, "utf8");

/** The rows of the tables of the guide: words, meaning, and who uses them. */
const rows = [...guide.matchAll(/^\| (?!word |---)(.+?) \| (.+?) \| (.*?) ?\|$/gm)].map(
  ([, words = "", , users = ""]) => ({
    written: words.split(", "),
    words: words.split(", ").flatMap((word) => wordsOf(word.replaceAll("`", ""))),
    users: [...users.matchAll(/`([^`]+)`/g)].map(([, user]) => user as string),
  }),
);
const small = /Small words[^:]*: (.+?)\.\n/s.exec(guide)?.[1]?.split(/,\s+/) ?? [];
const table = new Set([...rows.flatMap(({ words }) => words), ...small]);

let used: readonly Used[] = [];
let options: readonly string[] = [];

beforeAll(async () => {
  used = publicWords(["src/index.ts", ...filesBelow("src/entries", ".ts").sort()]);
  const all = await Promise.all(Object.values(pages).map((load) => load()));
  options = all.flatMap((page) => Object.keys(page.options));
}, 120_000);

/** The types that stand behind a parameter or key of this name. */
const typesOf = (name: string, except: readonly string[] = []) => [
  ...new Set(used.filter((one) => one.name === name && !except.includes(one.by)).map(({ type }) => type)),
];

describe("the table of words", () => {
  it("has every word that public names, parameters, keys and options of commands are made of", () => {
    const names = [...new Set([...used.map(({ name }) => name), ...options])];
    expect(names.length).toBeGreaterThan(1000);
    const missing = names.flatMap((name) =>
      wordsOf(name)
        .filter((word) => !formsOf(word).some((form) => table.has(form)))
        .map((word) => `${word} in ${name}`),
    );
    expect(missing).toEqual([]);
  });

  it("has no word that nothing uses, and none twice among the small ones", () => {
    const there = new Set([...used.map(({ name }) => name), ...options].flatMap(wordsOf).flatMap(formsOf));
    expect([...table].filter((word) => !there.has(word))).toEqual([]);
    const larger = new Set(rows.flatMap(({ words }) => words));
    expect(small.filter((word) => larger.has(word))).toEqual([]);
  });

  it("has every word in one row", () => {
    const all = rows.flatMap(({ written }) => written);
    expect(all.filter((word, i) => all.indexOf(word) !== i)).toEqual([]);
  });

  it("names users that use one of the words of their row", () => {
    for (const { words, users } of rows) {
      expect(users.length, words.join()).toBeGreaterThan(0);
      for (const user of users) {
        const own = used.filter(({ by }) => by === user).flatMap(({ name }) => wordsOf(name).flatMap(formsOf));
        expect(
          own.some((word) => words.includes(word)),
          `${user}: ${words}`,
        ).toBe(true);
      }
    }
  });
});

describe("one word is one thing", () => {
  it("`at` is a frequency, but for a place on a scale", () => {
    // the way of writing a frequency, and the zone of a limit
    for (const type of typesOf("at", ["frequency", "severityColour"])) expect(type).toMatch(/Frequency|\["at"\]/);
  });

  it("`dt` and `seconds` are times in s; `time` is a moment", () => {
    expect(typesOf("dt")).toEqual(expect.arrayContaining(["number"]));
    for (const type of typesOf("dt")) expect(type).toMatch(/^number( \| ArrayLike<number>)?$/);
    expect(typesOf("seconds")).toEqual(["number"]);
    for (const type of typesOf("time", ["SteadyOptions"])) expect(type).toMatch(/^(Date \| )?number$/);
  });

  it("`as` is a reading type in every spelling of that type", () => {
    for (const type of typesOf("as")) {
      // of a row of a table in SQL, NULL where a machine is refused
      expect(type.replace(/ \| null$/, "")).toMatch(
        /^(string|ReadingType(Text)?|AmplitudeType|VoltageType|UnitSpelling|EachOr<.*"as".*)$/,
      );
    }
  });

  it("`assumed` is one list of the same names", () => {
    // in SQL a text, since a column holds no list
    expect(typesOf("assumed", ["JoinedVerdict", "LimitRow"])).toEqual(["readonly Assumption[]"]);
  });

  it("a mass is a text with its unit", () => {
    for (const name of ["mass", "movingMass", "payload", "load"]) expect(typesOf(name), name).toEqual(["string"]);
    expect(used.filter(({ name }) => name === "kilograms")).toEqual([]);
  });

  it("an exported type of one name is one type", () => {
    const declared = new Map<string, number>();
    for (const one of used)
      if (one.by === one.name && one.type === "") declared.set(one.by, (declared.get(one.by) ?? 0) + 1);
    expect(["Level", "Band"].map((name) => declared.get(name))).toEqual([1, 1]);
  });
});
