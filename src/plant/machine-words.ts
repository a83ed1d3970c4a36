import { frozen, shown, VeladisError } from "../core/index";
import { type Machine, machineTypes, parseMachine } from "../severity/index";
import type { PlantColumn } from "./columns";

/** What the cell of a column may say of a machine. */
const saying = /* @__PURE__ */ frozen({
  power: ["power"],
  speed: ["speed"],
  "shaft height": ["shaftHeight", "frame"],
  support: ["support"],
  place: ["place"],
} as const satisfies { readonly [Column in PlantColumn]?: readonly (keyof Machine)[] });

/** Columns whose cells say one fact of the machine each. */
export const factColumns = /* @__PURE__ */ Object.keys(saying) as readonly (keyof typeof saying)[];

/** The words of a cell as the whole nameplate has them, where a length alone could be another one. */
export function factWords(column: keyof typeof saying, cell: string): string {
  return column === "shaft height" && /^\d/.test(cell) ? `shaft height ${cell}` : cell;
}

/**
 * Refuses a cell that says something else than its column, or something that is not understood.
 *
 * @throws {@link VeladisError} `syntax`, and as {@link parseMachine}
 */
export function requireFact(column: keyof typeof saying, words: string, what: string): void {
  const { assumedFacts: _, notUnderstood = [], ...said } = parseMachine(words);
  const allowed: readonly string[] = saying[column];
  const keys = Object.keys(said);
  if (notUnderstood.length === 0 && keys.length > 0 && keys.every((key) => allowed.includes(key))) return;
  throw new VeladisError("syntax", {
    expected: `${what}, and nothing else, with its unit`,
    received: shown(words),
    didYouMean: notUnderstood.flatMap(({ didYouMean }) => didYouMean),
  });
}

/**
 * Refuses words that are no kind of machine.
 *
 * @throws {@link VeladisError} `syntax` with the nearest kinds, and as {@link parseMachine}
 */
export function requireKind(words: string): void {
  const { type, notUnderstood = [] } = parseMachine(words);
  if (type !== undefined) return;
  throw new VeladisError("syntax", {
    expected:
      "a kind of machine that the tables know, or limits of the maker or the site beside a kind that they do not know",
    received: shown(words),
    didYouMean: notUnderstood.flatMap(({ didYouMean }) => didYouMean),
    allowed: Object.keys(machineTypes),
  });
}
