import { lazily, shown, VeladisError } from "../core/index";
import type { Machine } from "./machine";

/** How the cylinders of a compressor stand that is no horizontal one. */
const upright = /* @__PURE__ */ lazily(
  () =>
    /(?<![\w-]|\d\s)(?:[VWLXY](?:-\d)?(?=[\s,;).]|$)|(?:twin|double)[\s-]?V|vee|vert\b\.?|inclined|star|vertical(?:ly)?|upright|(?:angle|radial)[\s-]type|[VWLXY][\s-]?(?:block|type|form|shaped?|twin|arrangement|configuration))(?!\w)/i,
);

/**
 * Refuses a reciprocating compressor whose cylinders do not lie: the limits held here part by part are for horizontal ones alone
 * (ISO 20816-8 has a table of its own for vertical ones, which is not held).
 *
 * @param line - without what was read by direction
 * @throws {@link VeladisError} `unknown-option`
 */
export function requireHorizontal({ type }: Machine, line: string): void {
  const [written = ""] = type === "reciprocating compressor" ? (upright().exec(line) ?? []) : [];
  if (written === "") return;
  throw new VeladisError("unknown-option", {
    expected:
      "a horizontal reciprocating compressor: no limits for vertical, V-, W- and L-type ones are held here; their maker's limits judge them",
    received: shown(written),
  });
}
