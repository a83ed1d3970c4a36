import { VeladisError } from "../../core/index";
import { type AmplitudeType, format, parsedType } from "../../reading/index";
import { classify, type Judgement, type Scheme } from "../../severity/index";
import type { Band, Overall } from "../../signal/index";
import { type UnitSymbol, units } from "../../units/index";
import { choiceOf } from "../options/scheme-choice";
import { judgementText } from "../print/judgement-text";

/** A scheme that is to judge the levels of a record. */
export interface RecordJudge {
  /** What the scheme's limits are written in: the record is measured in these, so that nothing is converted. */
  readonly targets: readonly AmplitudeType[];
  /** The band that the scheme asks for. */
  readonly band: Band | undefined;
  judgement(
    levels: readonly Overall[],
    band: Band,
    settings: { readonly digits: number; readonly colour: boolean },
  ): { readonly judgement: Judgement; readonly cautions: readonly string[]; readonly text: string };
}

/**
 * What to measure for a scheme: what its limits are written in, RMS where it has that beside peaks of one quantity.
 *
 * A scheme that prints peaks beside RMS means 1.414 times the RMS value, not the crests of a waveform.
 */
function measuredTypes({ classes }: Scheme): AmplitudeType[] {
  const types = [...new Set(classes.flatMap(({ criteria }) => criteria.map(({ as }) => as)))];
  const parsed = types.map((as) => ({ as, ...parsedType(as) }));
  return parsed
    .filter(
      ({ detector, quantity }) =>
        detector === "rms" || !parsed.some((other) => other.quantity === quantity && other.detector === "rms"),
    )
    .map(({ as }) => as);
}

/**
 * The scheme for a machine's record.
 *
 * @throws {@link VeladisError} `missing-fact` for a scheme of shaft vibration and samples that are no displacement, and
 *   all of {@link choiceOf}
 */
export async function recordJudge(unit: UnitSymbol, name: string | undefined, machine: string): Promise<RecordJudge> {
  const { scheme, others } = await choiceOf(name, machine);
  if (scheme.place === "shaft" && units[unit].quantity !== "displacement") {
    throw new VeladisError("missing-fact", {
      expected: `samples of the shaft's displacement against its housing, as ${scheme.standard} needs`,
      received: `samples of ${units[unit].quantity}, in ${unit}`,
    });
  }
  const targets = measuredTypes(scheme);
  return {
    targets,
    band: scheme.band ?? undefined,
    judgement: (levels, band, { digits, colour }) => {
      const measured = targets.map((as) => levels.find(({ unit, detector }) => `${unit} ${detector}` === as));
      const readings = measured.filter((level) => level !== undefined);
      const judgement = classify(readings, {
        scheme,
        machine: machine.trim() === "" ? {} : machine,
        assume: "lowest limits",
      });
      const asks = judgement.band;
      const other = asks !== null && (asks[0] !== band[0] || asks[1] !== band[1]);
      const cautions = [
        ...(other
          ? [`the scheme asks for a band of ${asks[0]} to ${asks[1]} Hz, the level is from ${band[0]} to ${band[1]} Hz`]
          : []),
        ...(judgement.judged.detector === "pk"
          ? ["the peak is a crest of the waveform; the scheme may mean 1.414 times the RMS value, which is less"]
          : []),
      ];
      const page = judgementText(judgement, { written: format(judgement.judged, { digits }), digits, colour, others });
      return { judgement, cautions, text: page + cautions.map((caution) => `          ${caution}\n`).join("") };
    },
  };
}
