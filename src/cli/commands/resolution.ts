import { attempt, parseNumeral, shown, VeladisError } from "../../core/index";
import { frequency } from "../../frequency/index";
import { type Amplitude, parseAmplitude, significant } from "../../reading/index";
import { type ResolvingSettings, resolvingSettings, type WindowName } from "../../signal/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf, requireOption } from "../options/option-values";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { labelled } from "../print/labelled";
import type { resolutionPage } from "./resolution-page";

/** A frequency, or a reading that says its own. */
interface Tone {
  readonly hertz: number;
  readonly reading?: Amplitude;
}

/** The frequency that a text says, alone or behind a reading. */
function toneOf(text: string): Tone {
  const read = attempt(() => parseAmplitude(text));
  if (!read.ok) return { hertz: frequency(text).hertz };
  const reading = read.value;
  if (reading.hertz !== undefined) return { hertz: reading.hertz, reading };
  throw new VeladisError("missing-frequency", {
    expected: 'a reading with its frequency, such as "3.4 mm/s rms at 1480 r/min"',
    received: shown(text),
  });
}

/** A share written as a part of one or in per cent. */
function shareOf(written: string): number {
  const text = written.trim();
  const share = parseNumeral(text.replace(/\s*%$/, ""), 'an overlap such as "50 %" or 0.5');
  return text.endsWith("%") ? share / 100 : share;
}

/** The least and the most that two readings of one kind come to, and what they come to on the whole. */
function swell([{ reading: one }, { reading: other }]: readonly [Tone, Tone]) {
  if (one === undefined && other === undefined) return undefined;
  if (one === undefined || other === undefined || one.unit !== other.unit || one.detector !== other.detector) {
    throw new VeladisError("wrong-detector", {
      expected: "two readings in one unit by one detector, or two frequencies alone",
      received: [one, other]
        .map((reading) => (reading === undefined ? "a frequency" : `${reading.unit} ${reading.detector}`))
        .join(" and "),
    });
  }
  return {
    least: Math.abs(one.value - other.value),
    most: one.value + other.value,
    type: `${one.unit} ${one.detector}`,
    ...(one.detector === "rms" && { whole: Math.hypot(one.value, other.value) }),
  };
}

function resolutionText(
  settings: ResolvingSettings,
  swelling: ReturnType<typeof swell>,
  { digits, overlap }: { readonly digits: number; readonly overlap: number },
): string {
  const {
    difference,
    window,
    apart,
    smallest,
    resolution,
    seconds,
    highest,
    lines,
    spacing,
    segment,
    rate,
    averages,
    record,
    beat,
  } = settings;
  const n = (value: number): string => significant(value, digits);
  const share = Number((100 * overlap).toPrecision(6));
  // what an analyser is set to is told as it is set
  const plain = (value: number): string => `${Number(value.toPrecision(6))}`;
  const rows: [string, string][] = [
    ["apart", `${n(difference)} Hz (${n(60 * difference)} r/min)`],
    ["lines", `${n(resolution)} Hz apart or closer: the two stand ${apart} lines apart (${window} window)`],
    ["segment", `${n(seconds)} s or longer`],
    [
      "setting",
      `${lines} lines to ${plain(highest)} Hz: ${n(spacing)} Hz apart, ${n(segment)} s, ${plain(rate)} samples a second`,
    ],
    [
      "record",
      `${n(record)} s at this setting: ${averages === 1 ? "1 segment" : `${averages} segments averaged, ${share} % of each shared`}, the speed held still`,
    ],
    ["beat", `one swell every ${n(beat)} s`],
  ];
  const part = smallest === 0.5 ? "half" : "a tenth";
  if (swelling === undefined) rows.push(["holds", `where the smaller is ${part} of the larger or more`]);
  else {
    const { least, most, type, whole } = swelling;
    const mean = whole === undefined ? "" : `; ${n(whole)} over whole beats`;
    rows.push(["swells", `from ${n(least)} to ${n(most)} ${type}${mean}`]);
    // half the difference beside half the sum
    const ratio = (most - least) / (most + least);
    if (ratio < smallest) {
      rows.push(["caution", `the smaller is less than ${part} of the larger, and may not show beside it`]);
    }
  }
  return rows.map(([label, text]) => labelled(label, [text], 10)).join("");
}

/** What a spectrum needs to tell two frequencies apart, and how the two beat. */
export async function printResolution(given: ParsedOptions<typeof resolutionPage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  const [first, second] = texts;
  if (first === undefined || second === undefined) {
    throw new VeladisError("missing-option", {
      expected: 'two frequencies, as in veladis resolution "1480 r/min" "1492 r/min"',
      received: first === undefined ? "nothing" : shown(first),
    });
  }
  const digits = digitsOf(values.digits);
  const tones = [toneOf(first), toneOf(second)] as const;
  const swelling = swell(tones);
  const overlap = shareOf(values.overlap);
  const settings = resolvingSettings(tones[0], tones[1], {
    highest: frequency(requireOption(given, "highest")),
    window: values.window as WindowName,
    averages: parseNumeral(values.averages, "a number of averages"),
    overlap,
  });
  await io.out(
    values.json
      ? jsonLine("resolving settings", settings, swelling && { swells: swelling })
      : resolutionText(settings, swelling, { digits, overlap }),
  );
  return exitCodes.done;
}
