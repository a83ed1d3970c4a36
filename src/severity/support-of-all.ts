import { lazily, shown, VeladisError } from "../core/index";
import type { Machine } from "./machine";

/** Words of a direction or of a point that a support may be of. */
const ADVERB = /^(?:horizontal|vertical|axial|radial|lateral|transverse)ly$/i;
const places = /* @__PURE__ */ lazily(
  () =>
    /(?<![\w-])(?:(?:horizontal|vertical|axial|radial|lateral|transverse)(?:ly)?|n?de|(?:non[\s-])?driven?[\s-]end|free[\s-]end|inboard|outboard)(?![\w-])/gi,
);

/** Words of a soft support, whose limits are the higher ones. */
const soft = /* @__PURE__ */ lazily(
  () => /\b(?:flexib|springs?\b|isolators?\b|resilient|rubber\b|anti[\s-]vibration)/i,
);

/**
 * Refuses a flexible support beside a direction or a point that was not read with it, as in `axial flexible`, `flexible DE`
 * and `flexible, axially`: it would be taken for all directions, and has the higher limits.
 *
 * @param line - without what was read by direction
 * @throws {@link VeladisError} `syntax`
 */
export function requireSupportOfAll({ support, notUnderstood = [] }: Machine, line: string): void {
  if (support !== "flexible") return;
  const left = notUnderstood.flatMap(({ word }) => word.match(places()) ?? []).map((word) => word.toLowerCase());
  if (left.length === 0) return;
  const parts = line.split(/[,;|]/);
  const beside = parts.find((part) => soft().test(part) && left.some((word) => part.toLowerCase().includes(word)));
  const words = beside?.trim() ?? (left.some((word) => ADVERB.test(word)) ? line.trim() : undefined);
  if (words === undefined) return;
  throw new VeladisError("syntax", {
    expected:
      'a support with its direction, as in "flexible axially, rigid horizontally, rigid vertically"; or, of the whole machine, the support behind a comma, as in "vertical pump 90 kW, flexible"',
    received: shown(words),
  });
}
