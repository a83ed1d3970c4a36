import { frozen, inPlace, withParameters } from "../core/index";
import { checkedNames, requireClassParts, requireDisjoint, requireSchemeParts } from "./check-scheme";
import { asChecked } from "./checked";
import type { SchemeKind } from "./kinds";
import { requirePeakMeaning } from "./peak-meaning";
import { plainCopy } from "./plain-copy";
import { requireList, requireObject } from "./require-parts";
import type { Scheme } from "./scheme";

/** What {@link defineScheme} takes: a scheme, of which all but id, kind, standard and classes may be left out. */
export type SchemeInput<K extends SchemeKind = SchemeKind, Id extends string = string> = Pick<
  Scheme<K, Id>,
  "id" | "kind" | "standard" | "classes"
> &
  Partial<Scheme<K, Id>>;

/** The scheme with what was left out filled in, behind what was given. */
function completed(given: Record<string, unknown>): Record<string, unknown> {
  const rest = {
    edition: "not stated",
    title: given.standard,
    status: "current",
    statusNote: "not stated",
    scope: "not stated",
    place: "housing",
    measuredOn: "not stated",
    band: null,
  };
  const left = Object.entries(rest).filter(([name]) => given[name] === undefined);
  return { ...given, ...Object.fromEntries(left) };
}

/**
 * A scheme of your own: a site rule, a maker's limits, a table this library does not hold. It works everywhere a
 * built-in one does. Where it is used, one that bears the standard and edition of a built-in scheme with other limits is
 * refused: say whose it is, or see {@link confirmScheme}. It is plain data: `JSON.stringify` writes it, `defineScheme(JSON.parse(text))` reads it.
 *
 * @param input - the scheme; all but `id`, `kind`, `standard` and `classes` may be left out
 * @returns the scheme, complete and frozen; a copy, so that later changes of the input do not reach it
 * @throws {@link VeladisError} `wrong-type`, `syntax`, `unknown-option` for names there are none of, `unknown-unit`,
 *   `unknown-detector`, `missing-detector`, `not-positive`, `missing-fact` and `missing-option` for limits without a source, printed ones
 *   without a page, and no classes,
 *   `out-of-range` for limits that do not ascend and classes that overlap
 * @example
 * ```ts
 * import { classify, defineScheme } from "veladis/severity";
 *
 * const siteRule = defineScheme({
 *   id: "heating-works-fans",
 *   kind: "zones",
 *   standard: "Site rule 12, invented",
 *   classes: [
 *     {
 *       when: { support: "flexible" },
 *       criteria: [
 *         {
 *           as: "in/s pk",
 *           limits: { "A/B": 0.1, "B/C": 0.2, "C/D": 0.4 },
 *           source: { title: "Site rule 12", where: "table 2", provenance: "printed", page: "p. 3" },
 *         },
 *       ],
 *     },
 *   ],
 * });
 * classify("5 mm/s rms", { scheme: siteRule, machine: "flexible" }).zone; // => "C"
 * JSON.stringify(defineScheme(JSON.parse(JSON.stringify(siteRule)))) === JSON.stringify(siteRule); // => true
 * defineScheme({ ...siteRule, classes: [] }); // throws missing-option
 * ```
 */
export function defineScheme<const Id extends string, K extends SchemeKind>(input: SchemeInput<K, Id>): Scheme<K, Id> {
  return withParameters({ input }, () => {
    const given = plainCopy(requireObject(input, "a scheme with id, kind, standard and classes"), "scheme") as Record<
      string,
      unknown
    >;
    const scheme = completed(given);
    requireSchemeParts(scheme);
    const names = checkedNames(scheme);
    requireList(given.classes, "classes: a list of one or more", { option: "classes" }).forEach((one, i) => {
      inPlace({ option: "classes", index: i }, () => requireClassParts(one, names, `class ${i + 1}`));
    });
    const own = scheme as unknown as Scheme<K, Id>;
    requireDisjoint(own.classes);
    requirePeakMeaning(own);
    return frozen(asChecked(own));
  });
}
