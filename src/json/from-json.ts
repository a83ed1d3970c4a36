import { requireList, requireText, shown, VeladisError, withParameters } from "../core/index";
import type { AnswerKind, AnswerOf } from "./answers";
import { jsonVersion } from "./envelope";
import { citesOf, readField } from "./read";
import { requireRecord } from "./refuse";
import { requireKindName } from "./shapes/index";

const FORM = "a text that toJson or --json wrote";

/** The envelope as it stands there; what it inherits is none of its own. */
function parsed(text: string): Readonly<Record<string, unknown>> {
  try {
    return requireRecord(JSON.parse(text), FORM);
  } catch (error) {
    if (error instanceof VeladisError) throw error;
    throw new VeladisError("syntax", { expected: FORM, received: shown(text) });
  }
}

/**
 * An answer that {@link toJson} or the command with `--json` wrote, frozen, to be used as the first one was: a reading
 * converts on, a judgement is explained, a spectrum gives its overall. What the command told beside it comes along.
 *
 * Readings and histories are held against the catalogues, and what a step assumed is never lost. All else is held against
 * its shape alone: a judgement is not judged again. Samples come back as a Float64Array, which cannot be frozen.
 *
 * @param kind - the kind that is expected, as for {@link toJson}
 * @param text - one line of JSON
 * @throws {@link VeladisError} `syntax` for a text that is no JSON; `out-of-range` for another version; `wrong-type` for
 *   another kind; `missing-fact` and `wrong-type` where a part is missing or is another; as {@link convertAmplitude} for a
 *   reading that is none
 * @example
 * ```ts
 * import { explain } from "veladis/explain";
 * import { fromJson, toJson } from "veladis/json";
 * import { judge } from "veladis/severity";
 *
 * const text = toJson("verdict", judge("3.81 mm/s rms", "pump 90 kW 2980 r/min category II rigid"));
 * const verdict = fromJson("verdict", text);
 * verdict.headline; // => "zone B"
 * explain(verdict).steps.length; // => 2
 * ```
 */
export function fromJson<const Kind extends AnswerKind>(kind: Kind, text: string): AnswerOf<Kind> {
  return withParameters({ kind, text }, () => {
    requireKindName(kind);
    const { version, answer, list, sources, histories, ...parts } = parsed(
      requireText(text, FORM, { parameter: "text" }),
    );
    if (version !== jsonVersion) {
      throw new VeladisError("out-of-range", {
        expected: `${FORM}, of version ${jsonVersion}`,
        received: `version ${shown(version)}`,
      });
    }
    if (answer !== kind) {
      throw new VeladisError("wrong-type", { expected: `an answer of the kind ${kind}`, received: shown(answer) });
    }
    const cites = citesOf(
      requireList(sources as unknown[], "the sources of an answer", { option: "sources" }),
      requireList(histories as unknown[], "the histories of an answer", { option: "histories" }),
    );
    return readField(kind.endsWith("[]") ? list : parts, kind, kind, cites) as AnswerOf<Kind>;
  });
}
