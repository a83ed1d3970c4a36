import { nearest } from "../core/index";
import { folded } from "./label";

/** True where two words begin alike, but for two letters that changed places. */
function beginAlike(a: string, b: string): boolean {
  return a[0] === b[0] || (a[0] === b[1] && a[1] === b[0]);
}

/**
 * The known names near a word that was not understood, at most three: those that hold it, else those spelled nearly so.
 * Tags and short marks such as `DE` or `P-101A` are near to none.
 */
export function near(word: string, names: readonly string[], shortest = 4): string[] {
  const key = folded(word);
  if (key.length < shortest || /\d/.test(key)) return [];
  const holders = names.filter(
    (name) => name.split(/[\s-]/).some((part) => folded(part) === key) && folded(name) !== key,
  );
  if (holders.length > 0) return [...new Set(holders)].slice(0, 3);
  return [
    ...new Set(
      nearest(
        word,
        names.filter((name) => folded(name) !== key && beginAlike(key, folded(name))),
      ),
    ),
  ];
}
