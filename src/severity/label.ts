import { cached } from "../core/index";

/** A label as it is compared: without regard to case, spaces, dashes and the like. `BV-3`, `bv 3` and `BV3` are one. */
export function folded(label: string): string {
  return label
    .toLowerCase()
    .normalize("NFKC")
    .replace(/[^a-z0-9.]/g, "");
}

/** Roman numerals that number classes, groups and categories; the first is one. */
const roman = ["i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii"];

/** What two labels that mean the same have in common: {@link folded}, a Roman numeral to XII as the Arabic one. */
export const labelKey: (label: string) => string = /* @__PURE__ */ cached((label: string): string => {
  const key = folded(label);
  const place = roman.indexOf(key);
  return place < 0 ? key : String(place + 1);
});
