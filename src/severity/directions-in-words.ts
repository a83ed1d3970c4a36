import { lazily, shown, VeladisError } from "../core/index";
import { frequency } from "../frequency/index";
import type { ByDirection, Direction, DirectionFacts } from "./directions";
import { twoValues } from "./two-values";

const WAY = "(horizontal|vertical|axial)";
/** The word behind a direction; `direction axial` says the direction of the reading. */
const NOUN = "(?:\\s+direction(?![\\s:=]+(?:horizontal|vertical|axial)))?";

/** Behind a direction that is one: `axially`, `in the axial direction`, or the end of what is said; an axial fan is a fan. */
const END = "(?=\\s*(?:[,;|)]|$|and\\b|(?:rigid|flexible|natural|direction)\\b))";

/** Behind a support that is one: in `axially flexible coupling` it is a part. */
const BEHIND =
  "(?=\\s*(?:[,;|)]|$)|\\s+(?:and\\b|\\d|in\\s+(?:the\\s+)?(?:horizontal|vertical|axial)|horizontal|vertical|axial|natural|direction|read|measured|rigid|flexible|place|housing|shaft\\s*(?:[,;|]|$)))";

const SUPPORT = "(rigid|flexible)(?:ly)?(?:\\s+supports?)?";

/** `rigid horizontally`, `flexible in the axial direction`, `flexible axial, ...`; `horizontally rigid`, `axial: flexible`. */
const supports = /* @__PURE__ */ lazily(
  () =>
    new RegExp(
      `\\b${SUPPORT}\\s+(?:in\\s+(?:the\\s+)?${WAY}\\b${NOUN}|${WAY}(?:ly\\b|${NOUN}${END}))` +
        `|(?<!\\b(?:read|measured|direction)[\\s:=]+)\\b(?:in\\s+(?:the\\s+)?)?${WAY}(?:ly\\b[\\s:=]+|\\s+direction[\\s:=]+|\\s*[:=]\\s*)${SUPPORT}\\b${BEHIND}`,
      "gi",
    ),
);

/** A second support or direction right behind one of each, which may belong to either: `rigid horizontally flexible`. */
const third = /* @__PURE__ */ lazily(
  () =>
    new RegExp(
      `^\\s+(?:(?:rigid|flexible)(?:ly)?\\b(?!\\s+${WAY})|${WAY}ly\\b(?![\\s:=]+(?:rigid|flexible|natural)))`,
      "i",
    ),
);

/** `natural 18 Hz horizontally`, `horizontal natural frequency 18 Hz`. */
const naturals = /* @__PURE__ */ lazily(
  () =>
    new RegExp(
      `\\b(?:${WAY}(?:ly)?\\s+)?(?:lowest\\s+)?natural(?:\\s+frequency)?[\\s:=]+(?:of\\s+)?(\\d+(?:\\.\\d+)?\\s*(?:Hz|r/min|rpm))(?:\\s+(?:in\\s+(?:the\\s+)?)?${WAY}(?:ly)?\\b${NOUN})?`,
      "gi",
    ),
);

const readings = /* @__PURE__ */ lazily(
  () => new RegExp(`\\b(?:reading\\s+)?direction[\\s:=]+${WAY}\\b|\\b(?:read|measured)\\s+${WAY}ly\\b`, "gi"),
);

/** A natural frequency with a direction that was not read: it would be taken for every direction. */
const unread = /* @__PURE__ */ lazily(
  () =>
    /\bnatural\b[^,;|]*\b(?:horizontal|vertical|axial|lateral|transverse)(?:ly)?\b|\b(?:horizontal|vertical|axial|lateral|transverse)(?:ly)?(?:\s+lowest)?\s+natural\b/i,
);

/** A line without what it tells by direction, and that. */
export interface Directed {
  readonly line: string;
  readonly byDirection?: ByDirection;
  readonly direction?: Direction;
}

/** The refusal of supports and directions of which one is too many. */
function ofEither(words: string): VeladisError {
  return new VeladisError("syntax", {
    expected: 'each support with its direction, as in "rigid horizontally, flexible vertically"',
    received: shown(words),
  });
}

/**
 * Takes out of a line what it tells of a direction: `rigid horizontally, flexible axially`, `axially flexible`, `natural 18 Hz
 * horizontal`, `direction axial`.
 *
 * @throws {@link VeladisError} `syntax` for two values of one direction, two directions of a reading, and a support that may
 *   belong to either of two directions
 */
export function directedWords(written: string): Directed {
  const told: { [D in Direction]?: DirectionFacts } = {};
  const said = new Map<string, string>();
  const once = (what: string, value: string, words: string): void => {
    const before = said.get(what);
    if (before !== undefined && before !== value) throw twoValues(what, shown(before), shown(value), shown(words));
    said.set(what, value);
  };
  const tell = (way: string, facts: DirectionFacts, value: string, words: string): string => {
    const direction = way.toLowerCase() as Direction;
    for (const fact of Object.keys(facts)) once(`${direction} ${fact}`, value, words);
    told[direction] = { ...told[direction], ...facts };
    return ",";
  };
  let direction: Direction | undefined;
  const line = written
    .replace(supports(), (words: string, ...groups: readonly (string | number | undefined)[]) => {
      const [ahead, inWay, way, before, behind, at] = groups as [string?, string?, string?, string?, string?, number?];
      const rest = third().exec(written.slice((at as number) + words.length));
      if (rest !== null) throw ofEither(`${words}${rest[0]}`);
      const support = ((ahead ?? behind) as string).toLowerCase() as "rigid";
      return tell((inWay ?? way ?? before) as string, { support }, support, words);
    })
    .replace(naturals(), (words, before: string | undefined, hertz: string, behind: string | undefined) => {
      const way = before ?? behind;
      if (before !== undefined && behind !== undefined && before.toLowerCase() !== behind.toLowerCase())
        throw twoValues("direction of a natural frequency", shown(before), shown(behind), shown(words));
      return way === undefined ? words : tell(way, { naturalFrequency: frequency(hertz) }, hertz, words);
    })
    .replace(readings(), (words, one?: string, other?: string) => {
      direction = (one ?? other)?.toLowerCase() as Direction;
      once("direction of the reading", direction, words);
      return ",";
    });
  return {
    line,
    ...(Object.keys(told).length > 0 && { byDirection: told }),
    ...(direction !== undefined && { direction }),
  };
}

/**
 * Refuses a natural frequency whose direction was not read: it would be taken for every direction, and a flexible support
 * has the higher limits.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireNoDirection(line: string): void {
  const found = unread().exec(line);
  if (found === null) return;
  throw new VeladisError("syntax", {
    expected: 'a natural frequency with its direction, as in "natural 18 Hz horizontally", or without one',
    received: shown(found[0]),
  });
}
