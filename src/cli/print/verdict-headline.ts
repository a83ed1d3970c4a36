import { visibleText } from "../../core/index";
import type { Verdict } from "../../severity/index";
import { zoneMark } from "./zone-mark";

/** The headline of a verdict and, where it says more, its word; where a person reads it, zones on their colours. */
export function verdictHeadline(verdict: Verdict, colour: boolean): string {
  const { zones, kind, possible } = verdict;
  const [headline, word] = [visibleText(verdict.headline), visibleText(verdict.word)];
  const isPlain = !colour || (kind !== "zones" && possible.length > 1);
  const marked = isPlain
    ? headline
    : headline.replace(/[\w-]+/g, (name) => {
        const at = (zones as readonly string[]).indexOf(name);
        return at < 0 ? name : zoneMark(name, at, zones.length, true);
      });
  // "shaft A, housing D: state the place" says by itself what decides
  return word === headline || headline.includes(": ") ? marked : `${marked}, ${word}`;
}
