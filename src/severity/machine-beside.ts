import { phraseAt } from "./machine-phrases";
import type { MachineType } from "./machine-types";

/** A machine beside the one that is described: what drives it, or what it is for. */
export interface Beside {
  /** How many characters it takes with the words around it. */
  readonly length: number;
  readonly name: string;
  readonly role: "driver" | "for";
  readonly type?: MachineType;
}

/** The most words of a name, such as `single stage back pressure steam turbine`. */
const MOST_WORDS = 6;

/** Words that say that a machine behind them drives this one, or that this one is for it. */
const LEADS =
  /^(?:(driven[\s-]+by|driver|prime[\s-]+mover|coupled[\s-]+(?:to|with))|for)(?=[\s:=])[\s:=]+(?:(?:an?|the)\s+)?/i;

// made when it is asked for: a bundle cannot drop a pattern that its engine may not know
const driven = () => /^([^,;:=()[\]|"\d]{1,60}?)[\s‐‑–-]+driven(?!\p{L})(?![\s‐‑-]+(?:by|end)(?!\p{L}))/iu;

/** The name of a machine at the beginning of a text: up to its kind, or a single word where none follows. */
function nameAt(text: string): { length: number; type?: MachineType } | undefined {
  let at = 0;
  let first = 0;
  for (let count = 0; count < MOST_WORDS; count++) {
    const [, space = "", word = ""] = /^(\s*)([^\s,;:=()[\]|"]+)/.exec(text.slice(at)) ?? [];
    if (word === "" || /\d/.test(word)) break;
    const phrase = phraseAt(text.slice(at + space.length));
    const length = at + space.length + (phrase?.length ?? word.length);
    const type = phrase?.facts.type;
    if (type !== undefined || phrase?.mayBe !== undefined) return { length, ...(type !== undefined && { type }) };
    if (phrase !== undefined) break;
    at = length;
    first ||= length;
  }
  return first === 0 ? undefined : { length: first };
}

/**
 * A machine beside the one that is described, at the beginning of a text: `driven by a steam turbine`, `diesel-driven`,
 * `for pump`.
 */
export function besideAt(text: string): Beside | undefined {
  const [lead = "", drives] = LEADS.exec(text) ?? [];
  if (lead !== "") {
    const name = nameAt(text.slice(lead.length));
    // for service: no machine
    if (name === undefined || (drives === undefined && name.type === undefined)) return undefined;
    const role = drives === undefined ? "for" : "driver";
    return {
      ...name,
      length: lead.length + name.length,
      name: text.slice(lead.length, lead.length + name.length),
      role,
    };
  }
  const [whole = "", before = ""] = driven().exec(text) ?? [];
  if (whole === "") return undefined;
  const name = before.replace(/[‐‑–-]+/g, " ");
  // reciprocating diesel driven: the engine is what reciprocates
  const bare = name.replace(/^(?:recip(?:rocating)?|piston)\s+(?=(?:\p{L}+\s)?(?:diesel|engine)$)/iu, "");
  const phrase = phraseAt(bare);
  const type = phrase?.facts.type;
  const isKind = phrase?.length === bare.length && (type !== undefined || phrase.mayBe !== undefined);
  // pump motor driven: the pump stands before
  const isOne = isKind ? !phrase.taken.includes("type") : phrase === undefined && !/\s/.test(bare);
  return isOne ? { length: whole.length, name, role: "driver", ...(type !== undefined && { type }) } : undefined;
}
