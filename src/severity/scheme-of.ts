import { type ErrorPlace, inPlace, nearest, shown, VeladisError, withParameters } from "../core/index";
import { isChecked } from "./checked";
import { claimedTable } from "./claimed-table";
import { isConfirmedCopy } from "./confirmed-copy";
import { defineScheme } from "./define-scheme";
import type { SchemeKind } from "./kinds";
import type { Scheme } from "./scheme";
import { builtInSchemes, type SchemeId } from "./schemes/index";

/** A scheme, by the id of a built-in one or as itself. */
export type SchemeRef = SchemeId | Scheme;

/** The kind of the scheme that is referred to. */
export type KindOf<S extends SchemeRef> =
  S extends Scheme<infer K, string> ? K : Extract<(typeof builtInSchemes)[number], { readonly id: S }>["kind"];

/** The id of the scheme that is referred to. */
export type IdOf<S extends SchemeRef> = S extends Scheme<SchemeKind, infer Id> ? Id : S extends SchemeId ? S : never;

const byId: ReadonlyMap<string, Scheme> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (builtInSchemes as readonly Scheme[]).map((scheme) => [scheme.id.toLowerCase(), scheme] as const),
);

/**
 * The built-in scheme with this id, checked at run time.
 *
 * @throws {@link VeladisError} `wrong-type` or `unknown-option` with the ids that begin so, else the nearest
 * @example
 * ```ts
 * import { schemeById } from "veladis/severity";
 *
 * schemeById("iso-10816-3-2009").standard; // => "ISO 10816-3"
 * ```
 */
export function schemeById(id: string): Scheme {
  return withParameters({ id }, () => {
    const scheme = typeof id === "string" ? byId.get(id.trim().toLowerCase()) : undefined;
    if (scheme !== undefined) return scheme;
    const ids = builtInSchemes.map((one) => one.id);
    throw new VeladisError(typeof id === "string" ? "unknown-option" : "wrong-type", {
      expected: "the id of a built-in scheme",
      received: shown(id),
      parameter: "id",
      didYouMean: typeof id === "string" ? idsNear(id.slice(0, 100), ids) : [],
      allowed: ids,
    });
  });
}

/** The ids that a text begins, as of a standard without its edition; else the nearest. */
function idsNear(id: string, ids: readonly string[]): readonly string[] {
  const begun = `${id
    .trim()
    .toLowerCase()
    .replace(/[\s:_.-]+/g, "-")
    .replace(/-+$/, "")}-`;
  const those = begun === "-" ? [] : ids.filter((one) => one.toLowerCase().startsWith(begun));
  return those.length > 0 ? those : nearest(id, ids);
}

/** True for a scheme of which some limits are confirmed. */
function isSigned({ classes }: Scheme): boolean {
  return classes.some(({ criteria }) =>
    criteria.some(({ source, limitSources, ceilings }) =>
      [source, ...Object.values(limitSources ?? {}), ceilings?.source].some((one) => one?.provenance === "confirmed"),
    ),
  );
}

const withOwnId = /* @__PURE__ */ new WeakSet<Scheme>();

/**
 * The scheme itself, unless it has the id of a built-in one and is another: who is told the id could not say which of
 * them judged. A copy of the built-in scheme, as JSON gives it back, is that scheme still, and so is one with confirmed limits.
 * For the same reason no other has the standard and edition of a built-in one with other limits.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
function requireOwnId(scheme: Scheme): Scheme {
  if (withOwnId.has(scheme)) return scheme;
  const builtIn = byId.get(scheme.id.trim().toLowerCase());
  if (
    builtIn !== undefined &&
    JSON.stringify(builtIn) !== JSON.stringify(scheme) &&
    !isConfirmedCopy(builtIn, scheme)
  ) {
    // one that was stored, and confirmed limits of a table that has changed since
    if (builtIn.standard === scheme.standard && builtIn.edition === scheme.edition && isSigned(scheme)) {
      throw new VeladisError("out-of-range", {
        expected: `limits confirmed of the table ${scheme.id} as this version has it; it is another since they were stored: confirm them anew from your file of confirmations`,
        received: shown(scheme.id),
        option: "id",
      });
    }
    throw new VeladisError("out-of-range", {
      expected: "an id of its own for a scheme: choose another id than that of a built-in scheme",
      received: shown(scheme.id),
      option: "id",
    });
  }
  const claimed = builtIn === undefined ? claimedTable(scheme, builtInSchemes) : undefined;
  if (claimed !== undefined) {
    const { id, standard, edition } = claimed;
    throw new VeladisError("out-of-range", {
      expected: `a standard or edition of its own for a table with other limits than the built-in ${id}: say whose it is, as in edition ${shown(`${edition}, own copy`)}, or confirm the built-in one (confirmScheme, --confirmed)`,
      received: `standard ${shown(standard)}, edition ${shown(edition)}`,
    });
  }
  withOwnId.add(scheme);
  return scheme;
}

/** The scheme that is referred to, checked when it is neither built in nor defined. */
export function schemeOf(scheme: SchemeRef): Scheme {
  return inPlace({ parameter: "scheme" }, () => {
    if (typeof scheme !== "object" || scheme === null) return schemeById(scheme);
    if (byId.get(scheme.id?.toLowerCase?.()) === scheme) return scheme;
    return requireOwnId(isChecked(scheme) ? scheme : defineScheme(scheme));
  });
}

/** The schemes of a list, each as {@link schemeOf} gives it. */
export function schemesOf(schemes: readonly SchemeRef[], place: ErrorPlace): Scheme[] {
  return schemes.map((scheme, index) => inPlace({ ...place, index }, () => schemeOf(scheme)));
}
