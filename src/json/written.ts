import { placeOf, requireList } from "../core/index";
import { type Amplitude, amplitudeOf } from "../reading/index";
import type { Cited } from "./cited";
import { fieldOf } from "./field";
import { writtenNumber } from "./numbers";
import { plainCopy } from "./plain";
import { refuse, requireRecord } from "./refuse";
import { fieldsOf } from "./shapes/index";

/** What is written once and cited in an answer. */
export interface Citations {
  readonly sources: Cited;
  readonly histories: Cited;
}

/** One value, or the element of a list or record, as JSON holds it. */
function writtenOne(value: unknown, of: string, where: string, cited: Citations): unknown {
  if (of === "number") return writtenNumber(value, where);
  if (of === "text") return typeof value === "string" ? value : refuse(value, where, "a text");
  if (of === "truth") return typeof value === "boolean" ? value : refuse(value, where, "true or false");
  if (of === "plain") return plainCopy(value, where);
  if (of === "source") return cited.sources.place(plainCopy(requireRecord(value, where), where));
  if (of === "history") return cited.histories.place(writtenField(value, "step[]", where, cited));
  if (of !== "samples") return writtenParts(value, of, where, cited);
  if (!ArrayBuffer.isView(value)) refuse(value, where, "a Float64Array");
  return Array.from(value as Float64Array, (one, i) => writtenNumber(one, `${where}[${i}]`));
}

function writtenParts(value: unknown, kind: string, where: string, cited: Citations): object {
  const { fields, isReading } = fieldsOf(kind);
  const parts = requireRecord(value, where);
  const written: [string, unknown][] = [];
  for (const [key, field] of fields) written.push([key, writtenField(parts[key], field, `${where}.${key}`, cited)]);
  for (const [key, part] of Object.entries(parts)) {
    if (!fields.has(key) && part !== undefined) written.push([key, plainCopy(part, `${where}.${key}`)]);
  }
  // what could not be read back is not written; what was put beside is no part of the reading
  if (isReading)
    amplitudeOf(Object.fromEntries([...fields.keys()].map((key) => [key, parts[key]])) as unknown as Amplitude);
  return Object.fromEntries(written.filter(([, part]) => part !== undefined));
}

/** What stands in a field of an answer, as JSON holds it. */
export function writtenField(value: unknown, written: string, where: string, cited: Citations): unknown {
  const field = fieldOf(written);
  if (value === undefined && field.orNothing) return undefined;
  if (value === null && field.orNull) return null;
  if (field.in === "list") {
    return requireList(value as unknown[], `${where}: a list`, placeOf(where)).map((one, i) =>
      writtenOne(one, field.of, `${where}[${i}]`, cited),
    );
  }
  if (field.in === undefined) return writtenOne(value, field.of, where, cited);
  const parts = Object.entries(requireRecord(value, where));
  return Object.fromEntries(parts.map(([key, part]) => [key, writtenOne(part, field.of, `${where}.${key}`, cited)]));
}
