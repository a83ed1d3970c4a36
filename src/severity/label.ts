/** A label as it is compared: without regard to case, spaces, dashes and the like. `BV-3`, `bv 3` and `BV3` are one. */
export function folded(label: string): string {
  return label
    .toLowerCase()
    .normalize("NFKC")
    .replace(/[^a-z0-9.]/g, "");
}
