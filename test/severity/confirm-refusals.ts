import * as s from "veladis/severity";

const id = "iso-10816-7-2009";
const signed = { page: "12", by: "J. Example", on: "2024-03-04" } as const;
const read = {
  ...{ scheme: id, edition: "2009", row: "category I, power up to 200 kW" },
  ...{ limit: "C/D", as: "mm/s rms", printed: 6.5, ...signed },
} as const;

/** A confirmation that is right but for some of its parts; undefined takes a part away. */
const but = (parts: object) => s.confirmScheme(id, [{ ...read, ...parts } as s.Confirmation]);
const lawOf = (limit: string, printed: number, parts: object = {}) =>
  ({
    ...{ scheme: "api-617-8th-shaft", edition: s.schemeById("api-617-8th-shaft").edition, limit, printed },
    ...{ row: s.confirmableLimits("api-617-8th-shaft")[0]?.row, as: s.confirmableLimits("api-617-8th-shaft")[0]?.as },
    ...{ ...signed, ...parts },
  }) as s.Confirmation;
const rule = (source: object) => ({
  ...{ id: "rule-12", kind: "zones", standard: "Site rule 12" },
  classes: [{ criteria: [{ as: "mm/s rms", limits: { "B/C": 4, "C/D": 8 }, source }] }],
});
const defined = (source: object) => s.defineScheme(rule({ title: "Site rule 12", ...source }) as s.SchemeInput);

/** Confirmations that are refused, and questioned. */
export const confirmRefusals: Readonly<Record<string, () => unknown>> = {
  "confirmScheme, no list": () => s.confirmScheme(id, 7 as never),
  "confirmScheme, a confirmation that is none": () => s.confirmScheme(id, ["agreed" as never]),
  "confirmScheme, a part that is none": () => but({ colour: "red" }),
  "confirmScheme, no row": () => but({ row: undefined }),
  "confirmScheme, a row that is no text": () => but({ row: 1 }),
  "confirmScheme, no printed value": () => but({ printed: undefined }),
  "confirmScheme, a printed value of zero": () => but({ printed: 0 }),
  "confirmScheme, no page": () => but({ page: undefined }),
  "confirmScheme, no name": () => but({ by: undefined }),
  "confirmScheme, a name of two lines": () => but({ by: "J.\nExample" }),
  "confirmScheme, a name that is no text": () => but({ by: 7 }),
  "confirmScheme, no day": () => but({ on: undefined }),
  "confirmScheme, a day that is none": () => but({ on: "2024-02-30" }),
  "confirmScheme, a day that is no text": () => but({ on: 20240304 }),
  "confirmScheme, a day in the future": () => but({ on: "2999-01-01" }),
  "confirmScheme, a second name that is no text": () => but({ second: 7 }),
  "confirmScheme, the first name again": () => but({ second: "j example" }),
  "confirmScheme, a second name that is none": () => but({ second: "-" }),
  "confirmScheme, the initials of the first": () => but({ second: "JE" }),
  "confirmScheme, a table for the page": () => but({ page: "Table A.1" }),
  "confirmScheme, the limit of another row": () => but({ row: "category II, power up to 200 kW", printed: 6.5 }),
  "confirmScheme, a page without a number": () => but({ page: "n/a" }),
  "confirmScheme, a day before the edition": () => but({ on: "2008-12-31" }),
  "confirmScheme, a slip as a page rounds it": () => but({ printed: 9.2, second: "K. Example" }),
  "confirmScheme, a slip of peak in/s": () => but({ printed: 0.36 }),
  "confirmScheme, a value that is far off": () => but({ printed: 4.2 }),
  "confirmScheme, reread that is no truth": () => but({ reread: "yes" }),
  "confirmScheme, a shipped value of zero": () => but({ shipped: 0 }),
  "confirmScheme, a shipped value that is another by now": () => but({ shipped: 6.6 }),
  "confirmScheme, another scheme": () => but({ scheme: "iso-10816-3-2009" }),
  "confirmScheme, another edition": () => but({ edition: "2020" }),
  "confirmScheme, a row there is none of": () => but({ row: "category I, power to 200 kW" }),
  "confirmScheme, a limit there is none of": () => but({ limit: "D/E" }),
  "confirmScheme, another unit": () => but({ as: "in/s rms" }),
  "confirmScheme, a type there is none of": () => but({ as: "mm/s mean" }),
  "confirmScheme, a limit twice": () => s.confirmScheme(id, [read, read]),
  "confirmScheme, a slip of detector": () => but({ printed: 9.19, second: "K. Example" }),
  "confirmScheme, a slip of unit": () => but({ printed: 0.256 }),
  "confirmScheme, a limit raised by one": () => but({ printed: 6.9 }),
  "confirmScheme, limits that do not rise": () => but({ printed: 3.9, reread: true }),
  "confirmScheme, ceilings that do not rise": () =>
    s.confirmScheme(id, [
      { ...read, limit: "alarm at most", printed: 5 },
      { ...read, limit: "trip at most", printed: 4.6, reread: true },
    ]),
  "confirmScheme, a ceiling alone": () => but({ limit: "alarm at most", printed: 5 }),
  "confirmScheme, a law of speed by two": () =>
    s.confirmScheme("api-617-8th-shaft", [
      lawOf("acceptance root of", s.confirmableLimits("api-617-8th-shaft")[0]?.shipped as number),
      lawOf("acceptance at most", s.confirmableLimits("api-617-8th-shaft")[1]?.shipped as number, { by: "K. Example" }),
    ]),
  "confirmScheme, a limit that is confirmed": () => s.confirmScheme(s.confirmScheme(id, [read]), [read]),
  "classify, a stored scheme confirmed of another version of its table": () => {
    const stored = JSON.parse(JSON.stringify(s.confirmScheme(id, [read])));
    stored.classes[0].criteria[0].limits["A/B"] = 2.4;
    return s.classify("2 mm/s rms", { scheme: stored, machine: "pump 90 kW category I" });
  },
  "classify, a table that bears a built-in standard and edition with another limit": () => {
    const own = JSON.parse(JSON.stringify({ ...s.schemeById(id), id: "pumps" }));
    own.classes[0].criteria[0].limits["A/B"] = 2.6;
    return s.classify("2 mm/s rms", { scheme: own, machine: "pump 90 kW category I" });
  },
  "schemeById, a standard without its edition": () => s.schemeById("ISO 10816-7"),
  "confirmableLimits, no scheme": () => s.confirmableLimits("" as never),
  "confirmedSchemes, no list": () => s.confirmedSchemes(7 as never),
  "confirmedSchemes, no built-in scheme": () => s.confirmedSchemes([{ ...read, scheme: "site-rule" }]),
  "confirmedSchemes, of no list of schemes": () => s.confirmedSchemes([read], 7 as never),
  "confirmedSchemes, of a scheme twice": () => s.confirmedSchemes([read], [id, s.schemeById(id)]),
  "defineScheme, a name in a source that is not confirmed": () => defined({ provenance: "memory", by: "J. Example" }),
  "defineScheme, a confirmed source without name": () => defined({ provenance: "confirmed", page: "12" }),
  "defineScheme, a confirmed source of nobody": () => defined({ provenance: "confirmed", by: "-", page: "12" }),
  "defineScheme, a confirmed source with the first name again": () =>
    defined({ provenance: "confirmed", by: "J. Example", second: "Example, J.", page: "12" }),
  "defineScheme, a confirmed source without page": () => defined({ provenance: "confirmed", by: "J. Example" }),
  "defineScheme, a printed source without page": () => defined({ provenance: "printed" }),
  "defineScheme, a confirmed source that is disputed": () =>
    defined({ provenance: "confirmed", by: "J. Example", page: "12", on: "2024-03-04", disputed: "6.5 or 6.6" }),
  "defineScheme, a source disputed by no text": () => defined({ provenance: "memory", disputed: true }),
  "defineScheme, a confirmed source without day": () =>
    defined({ provenance: "confirmed", by: "J. Example", page: "12" }),
};
