import fc from "fast-check";
import { expect, it } from "vitest";
import { pageNames } from "../../../src/cli/plant-report/page-names";

it("are the tags in small letters, where these say all of them", () => {
  expect(pageNames(["LU-01", "ID fan 1", "KW_02.a/b"], [])).toEqual(["lu-01.html", "id-fan-1.html", "kw-02-a-b.html"]);
});

it("of tags that would share one have a mark of their own each", () => {
  const [a, b, c] = pageNames(["LU-01", "lu 01", "LU-02"], []);
  expect(a).toMatch(/^lu-01-[0-9a-f]{8}\.html$/);
  expect(b).toMatch(/^lu-01-[0-9a-f]{8}\.html$/);
  expect(a).not.toBe(b);
  expect(c).toBe("lu-02.html");
});

it("do not change with the order of the list, but of a tag that stands there twice", () => {
  const tags = ["Насос 1", "LU-01", "LU/01", "ü"];
  const names = pageNames(tags, []);
  expect(pageNames([...tags].reverse(), []).reverse()).toEqual(names);
  const twice = pageNames(["LU-01", "LU-01"], []);
  expect(new Set(twice).size).toBe(2);
});

it.each([
  "../../etc/passwd",
  "..",
  "/",
  "\\\\host\\share",
  "C:\\x",
  "a\0b",
  "%2e%2e",
  ".hidden",
  "con",
  "NUL",
  "com1",
  "index",
  "",
  "ü",
])("of %j lead nowhere else", (tag) => {
  const [name] = pageNames([tag], ["index"]);
  expect(name).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*\.html$/);
  expect(name).not.toMatch(/^(?:con|nul|com1|index)\.html$/);
});

it("are one a tag, short, of plain letters, and never that of the index", () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.string({ unit: "binary" }), fc.constantFrom("a", "A", "index", "con", "a-b", "a b"))),
      (tags) => {
        const names = pageNames(tags, ["index"]);
        expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(tags.length);
        for (const name of names) {
          expect(name).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*\.html$/);
          expect(name.length).toBeLessThan(100);
          expect(name).not.toBe("index.html");
        }
      },
    ),
  );
});
