import { shown } from "../core/index";
import { type Fact, isNumberFact } from "./facts";
import { labelled } from "./machine-words";

/** Facts that words of their own say, without the name of the fact. */
const plain: readonly Fact[] = /* @__PURE__ */ Object.freeze(["type", "support", "place", "condition", "application"]);

/**
 * How a label of a standard is written in the words of a machine, for the end of a question: behind the name of the fact.
 * Nothing for what is written by itself, such as rigid or 90 kW.
 *
 * @param allowed - the labels of the table, where they are known
 */
export function writtenFact(fact: Fact, allowed: readonly string[] = []): string {
  if (plain.includes(fact) || isNumberFact(fact)) return "";
  const [label] = allowed;
  if (label === undefined) return `, behind the word ${shown(fact)}`;
  const isPlain = (labelled as readonly string[]).includes(fact) && /^[\p{L}\p{N} -]+$/u.test(label);
  return `, in words such as ${isPlain || fact === "frame" ? shown(`${fact} ${label}`) : `${fact} ${shown(label)}`}`;
}
