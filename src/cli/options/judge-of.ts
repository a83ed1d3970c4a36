import {
  type Assume,
  type BackgroundOfPoints,
  classify,
  type JudgeOptions,
  judge,
  type ReadingRef,
  type Scheme,
  type Verdict,
} from "../../severity/index";

/** What is told of how to judge. */
export interface JudgeSettings {
  /** The scheme that is named; undefined for those that the machine's facts admit. */
  readonly scheme: Scheme | undefined;
  readonly machine: string;
  /** The schemes to choose from; undefined for the built-in ones. */
  readonly schemes?: readonly Scheme[] | undefined;
  readonly strict: boolean;
  readonly crestFactor?: number;
  /** The reading with the machine stopped. */
  readonly background?: BackgroundOfPoints | undefined;
}

/** What is told of how to judge, as options of the library. */
export function judgeOptions({
  strict,
  crestFactor,
  background,
}: JudgeSettings): JudgeOptions & { readonly assume: Assume } {
  return {
    assume: strict ? "nothing" : "lowest limits",
    ...(crestFactor !== undefined && { crestFactor }),
    // judged by itself a reading refuses a list
    ...(background !== undefined && { background: background as string }),
  };
}

/** A judge of readings of one machine: by the scheme that is named, else by all that the machine's facts admit. */
export function judgeOf(settings: JudgeSettings): (reading: ReadingRef) => Verdict {
  const { scheme, machine } = settings;
  const options = judgeOptions(settings);
  const { schemes } = settings;
  const all = { ...options, ...(schemes !== undefined && { schemes }) };
  if (scheme === undefined) return (reading) => judge(reading, machine, all);
  return (reading) => {
    const judgement = classify(reading, { ...options, scheme, ...(machine.trim() !== "" && { machine }) });
    return { ...judgement, judgements: [judgement], deciding: [] };
  };
}
