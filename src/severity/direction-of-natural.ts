import { lazily, shown, VeladisError } from "../core/index";

/** `Natural 18 Hz horizontally`, `horizontal natural frequency 18 Hz`; `vertical pump, natural 65 Hz` is a kind of pump. */
const directed = /* @__PURE__ */ lazily(
  () =>
    /\bnatural\b[^,;|]*\b(?:horizontal|vertical|axial|lateral|transverse)(?:ly)?\b|\b(?:horizontal|vertical|axial|lateral|transverse)(?:ly)?(?:\s+lowest)?\s+natural\b/i,
);

/**
 * Refuses a natural frequency with its direction: the support that follows from it would be taken for every direction, and a
 * flexible one has the higher limits.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireNoDirection(line: string): void {
  const found = directed().exec(line);
  if (found === null) return;
  throw new VeladisError("syntax", {
    expected:
      "a natural frequency without a direction, for readings of its own direction alone: give each direction a judgement of its own",
    received: shown(found[0]),
  });
}
