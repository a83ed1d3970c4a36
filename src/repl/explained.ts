import { explain, type WithHistory } from "../amplitude/index";
import { VeladisError } from "../core/index";
import { isAmplitude, isList, isReport, kindText, type Value } from "./value";

function hasHistory(data: unknown): data is WithHistory {
  return typeof data === "object" && data !== null && Array.isArray((data as Partial<WithHistory>).history);
}

/**
 * The arithmetic that led to a value, a line a step; of several, one block each.
 *
 * @throws {@link VeladisError} `wrong-type` for a value that keeps no steps, such as a number
 */
export function explanationText(value: Value): string {
  if (isList(value) && value.length > 0) return value.map(explanationText).join("\n\n");
  if (isAmplitude(value)) return explain(value).text;
  if (isReport(value) && hasHistory(value.data)) return explain(value.data).text;
  throw new VeladisError("wrong-type", {
    expected: "an amplitude to explain, or what was made of one; numbers keep no steps",
    received: kindText(value),
  });
}
