import { requireList } from "../core/index";
import { type Amplitude, type Assumption, amplitudeOf, checkedSteps, type Step, union } from "../reading/index";
import { fieldOf } from "./field";
import { readNumber } from "./numbers";
import { plainCopy } from "./plain";
import { refuse, requireRecord } from "./refuse";
import { fieldsOf } from "./shapes/index";

/** What an answer that is read cites, each read when it is first cited. */
export interface Cites {
  source(place: unknown, where: string): unknown;
  history(place: unknown, where: string): readonly Step[];
}

/** What a list that is cited has in a place. */
function citedAt<Item>(
  list: readonly unknown[],
  read: (written: unknown, where: string) => Item,
  name: string,
): (place: unknown, where: string) => Item {
  const known = new Map<number, Item>();
  return (place, where) => {
    const found = known.get(place as number);
    if (found !== undefined) return found;
    if (!Number.isInteger(place) || (place as number) < 0 || (place as number) >= list.length) {
      refuse(place, where, `a place in the list of ${name}, from 0`);
    }
    const item = read(list[place as number], `${name}[${place}]`);
    known.set(place as number, item);
    return item;
  };
}

/** A source: its title and whatever else it says, all of it texts. */
function readSource(written: unknown, where: string): unknown {
  const source = requireRecord(plainCopy(written, where), where);
  for (const key of new Set(["title", "provenance", ...Object.keys(source)])) {
    if (typeof source[key] !== "string") refuse(source[key], `${where}.${key}`, "a text");
  }
  return source;
}

/** What an answer cites, of the lists beside it. */
export function citesOf(sources: readonly unknown[], histories: readonly unknown[]): Cites {
  const cites: Cites = {
    source: citedAt(sources, readSource, "sources"),
    // a step cites nothing itself
    history: citedAt(
      histories,
      (written, where) => checkedSteps(readField(written, "step[]", where, cites) as Step[]),
      "histories",
    ),
  };
  return cites;
}

function readOne(written: unknown, of: string, where: string, cites: Cites): unknown {
  if (of === "number") return readNumber(written, where);
  if (of === "text") return typeof written === "string" ? written : refuse(written, where, "a text");
  if (of === "truth") return typeof written === "boolean" ? written : refuse(written, where, "true or false");
  if (of === "plain") return plainCopy(written, where);
  if (of === "source") return cites.source(written, where);
  if (of === "history") return cites.history(written, where);
  if (of !== "samples") return readParts(written, of, where, cites);
  const numbers = requireList(written as unknown[], `${where}: a list`);
  return Float64Array.from(numbers, (one, i) => readNumber(one, `${where}[${i}]`));
}

/** Where steps assumed something, what they lead to has assumed it too, whatever else it says. */
function withAssumed(answer: Record<string, unknown>): Record<string, unknown> {
  const steps = (answer.history ?? []) as readonly Step[];
  const told = (answer.assumed ?? []) as readonly Assumption[];
  const all = steps.reduce<readonly Assumption[]>((some, step) => union(some, step.assumed), told);
  return all.length > told.length ? { ...answer, assumed: all } : answer;
}

function readParts(written: unknown, kind: string, where: string, cites: Cites): object {
  const { fields, isReading } = fieldsOf(kind);
  const parts = requireRecord(written, where);
  const read: [string, unknown][] = [];
  for (const [key, field] of fields) {
    // what is inherited is nobody's part
    const part = Object.hasOwn(parts, key) ? parts[key] : undefined;
    const value = readField(part, field, `${where}.${key}`, cites);
    if (value !== undefined) read.push([key, value]);
  }
  const beside = Object.entries(parts)
    .filter(([key]) => !fields.has(key))
    .map(([key, part]) => [key, plainCopy(part, `${where}.${key}`)]);
  const answer = withAssumed(Object.fromEntries(read));
  const checked = isReading ? amplitudeOf({ hertz: undefined, ...answer } as unknown as Amplitude) : answer;
  return Object.freeze({ ...checked, ...Object.fromEntries(beside) });
}

/** What stands in a field of an answer, read from JSON and frozen. */
export function readField(written: unknown, shape: string, where: string, cites: Cites): unknown {
  const field = fieldOf(shape);
  if (written === undefined && field.orNothing) return undefined;
  if (written === null && field.orNull) return null;
  if (field.in === "list") {
    const list = requireList(written as unknown[], `${where}: a list`);
    return Object.freeze(Array.from(list, (one, i) => readOne(one, field.of, `${where}[${i}]`, cites)));
  }
  if (field.in === undefined) return readOne(written, field.of, where, cites);
  const parts = Object.entries(requireRecord(written, where));
  return Object.freeze(
    Object.fromEntries(parts.map(([key, part]) => [key, readOne(part, field.of, `${where}.${key}`, cites)])),
  );
}
