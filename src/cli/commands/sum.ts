import { convertAmplitude } from "../../amplitude/index";
import { shown, VeladisError } from "../../core/index";
import { type Amplitude, format, parseAmplitude, parsedType, writtenIn } from "../../reading/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf } from "../options/option-values";
import { exitCodes } from "../print/exit-codes";
import { explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import type { sumPage } from "./sum-page";

/** Refuses velocities beside accelerations in the words of the command. */
function requireOneQuantity(readings: readonly Amplitude[]): void {
  const [first, ...others] = readings as [Amplitude, ...Amplitude[]];
  const other = others.find(({ quantity }) => quantity !== first.quantity);
  if (other === undefined) return;
  throw new VeladisError("wrong-quantity", {
    expected: 'readings of one quantity; convert the others first, as in veladis "1 g rms at 25 Hz to mm/s rms"',
    received: `${format(first)} (${first.quantity}) and ${format(other)} (${other.quantity})`,
  });
}

/** A type to answer in; of RMS alone, since the phases that decide the peaks of a sum are lost. */
function summedType(written: string): string {
  const { type, detector } = parsedType(written);
  if (detector === "rms") return type;
  throw new VeladisError("wrong-detector", {
    expected:
      'an RMS type for a sum of RMS readings, such as --to "in/s rms": the phases are lost, and with them the peaks, which may be as high as those of all readings added',
    received: shown(written.trim()),
    allowed: ["rms"],
    option: "to",
  });
}

/** What several RMS readings come to, uncorrelated and at most. */
export async function printSum(given: ParsedOptions<typeof sumPage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  const digits = digitsOf(values.digits);
  if (texts.length < 2) {
    throw new VeladisError("missing-option", {
      expected: 'two readings or more, as in veladis sum "2.1 mm/s rms" "0.8 mm/s rms"',
      received: texts[0] === undefined ? "nothing" : shown(texts[0]),
    });
  }
  const readings = texts.map((text) => parseAmplitude(text));
  requireOneQuantity(readings);
  const { rootSumSquare } = await import("../../repl/index");
  const sum = rootSumSquare(readings);
  const types = values.to === undefined ? [writtenIn(readings[0] as Amplitude)] : values.to.split(",").map(summedType);
  const linear = `${sum.unit} ${sum.detector}`;
  const most = readings.reduce((total, reading) => total + convertAmplitude(reading, linear as "mm/s rms").value, 0);
  const { assumed: _, ...rest } = sum;
  const atMost = { ...rest, value: most };
  const answers = types.map((type) => {
    const answer = convertAmplitude(sum, type);
    return { answer, text: format(answer, { digits }), most: format(convertAmplitude(atMost, type), { digits }) };
  });
  if (values.json) {
    const lines = answers.map(({ answer, text, most: highest }) =>
      jsonLine("amplitude", answer, { text, atMost: highest, ...explainedSteps(values.explain, ["", answer]) }),
    );
    await io.out(lines.join(""));
    return exitCodes.done;
  }
  const rows = answers.map(
    ({ text, most: highest }) => `${text}  (uncorrelated; ${highest} at most, of one frequency and in phase)\n`,
  );
  await io.out(
    rows.join("") + (values.explain ? explainedText(answers.map(({ answer, text }) => [text, answer] as const)) : ""),
  );
  return exitCodes.done;
}
