import type { Quantity } from "../../units/index";

/** Ways of writing that stand in headings alone, and the library's own; parts of a text, replaced in this order. */
const spellings: readonly (readonly [RegExp, string])[] = [
  // gauss and a name of capitals elsewhere; a column of vibration has neither
  [/^G(?=$|[\s'-])/, "g"],
  [/^g[- ]?forces?\b/i, "g"],
  [/^g[- ]?(?=(?:rms|pk|pp|peak)\b)/i, "g "],
  [/^MM(?=$| )/, "mm"],
  [/^[Uµμ]M(?=$| )/, "um"],
  [/^(milli|micro|nano|centi)meter(?=$|[\s/])/i, "$1meters"],
  [/^(met(?:er|re)s?|feet|inch(?:es)?|[a-zµμ]{1,2}) ?\/ ?s(?:ec)? ?\/ ?s(?:ec)?\b/i, "$1/s2"],
  [/^(met(?:er|re)s?|feet|inch(?:es)?|[a-zµμ]{1,2}) ?\/ ?s(?:ec|econds?)? ?(?:\^|\*\*)? ?([2²])/i, "$1/s$2"],
  [/^([cmnuµμ]?m|in|ft) ?[.·⋅*]? ?s ?\^?[-⁻−–]([12¹²])/i, "$1/s$2"],
  [/^([cmnuµμ]?m|in|ft)s([2²])(?=$|[\s-])/, "$1/s$2"],
  [/^([cmnuµμ]?m|in|ft)ps([2²]?)(?=$|[\s-])/i, "$1/s$2"],
  [/\/s[1¹](?=$|\s)/, "/s"],
  [/(?<=\/s[2²]?)[- ]?(?=(?:rms|pk|pp|peak)\b)/i, " "],
];

/** A heading's way of writing a unit as the parsers of the library read it. */
export function librarySpelling(text: string): string {
  return spellings.reduce((spelled, [way, plain]) => spelled.replace(way, plain), text);
}

/** Words of a heading that name a quantity. */
const quantityWords: Readonly<Record<string, Quantity>> = {
  acc: "acceleration",
  accel: "acceleration",
  acceleration: "acceleration",
  accelerations: "acceleration",
  vel: "velocity",
  velocity: "velocity",
  velocities: "velocity",
  disp: "displacement",
  displ: "displacement",
  displacement: "displacement",
  displacements: "displacement",
};

/** The quantities that a heading names, each with its word; `acc. to` names none. */
export function quantitiesIn(heading: string): { readonly written: string; readonly quantity: Quantity }[] {
  const words = heading.split(/[^\p{L}]+/u);
  return words.flatMap((written, i) => {
    const word = written.toLowerCase();
    if (!Object.hasOwn(quantityWords, word) || (word === "acc" && words[i + 1]?.toLowerCase() === "to")) return [];
    return [{ written, quantity: quantityWords[word] as Quantity }];
  });
}

/** Headings that name what rows are counted along, and nothing else: `time waveform` names none. */
const axes = {
  time: /^(?:t|times?|time ?stamps?|date|date(?: and |[ /]?)time|clock|elapsed(?: time)?)$/i,
  frequency: /^(?:freq|frequency|frequencies)$/i,
} as const;

/** What the rows are counted along, where a heading is the name of it, with or without a unit in brackets. */
export function axisIn(heading: string): { readonly written: string; readonly axis: keyof typeof axes } | undefined {
  const written = heading.replace(/\(.*?\)|\[.*?\]/g, "").trim();
  const axis = (["time", "frequency"] as const).find((one) => axes[one].test(written));
  // T may be a tangential direction
  return axis === undefined || written === "T" ? undefined : { written, axis };
}

/** Words that name a value formed over time, which no sample of a waveform is: a level, or a trend of levels. */
const levels = [
  ...["levels?", "lvl", "overalls?", "amplitudes?", "magnitudes?", "severity", "readings?"],
  ...["trends?", "history", "crest", "kurtosis", "oa", "spectr(?:um|a)", "[va] ?eff"],
  ...["\\p{L}*pegel", "\\p{L}*schwinggeschwindigkeit", "\\p{L}*schwingst(?:ä|ae)rke", "\\p{L}*amplituden?"],
  ...[
    "\\p{L}*(?:effektiv|spitzen|scheitel|mittel|tages|stunden|wochen|maximal|minimal)werte?",
    "niveaux?",
    "nivel",
    "livello",
    "efficace",
  ],
  // not the min of r/min, of 10 min and of a rate; a waveform without its mean is one
  ...["max(?:imum|ima)?", "(?<![/\\d] ?|per )min(?:imum|ima)?", "mean(?![- ]?(?:removed|free|subtracted))"],
  ...["averaged?", "averages", "avg", "medians?", "alarms?", "hourly", "daily", "weekly", "monthly", "yearly"],
  ...["(?:stündlich|täglich|taeglich|wöchentlich|monatlich)(?:e[rsn]?)?"],
];
const level = new RegExp(`(?<!\\p{L})(?:${levels.join("|")})(?!\\p{L})`, "iu");

/** Words by which a heading says that each row is a sample, whatever else it says. */
const sampled = /(?<!\p{L})(?:wave ?forms?|samples?|sampled|raw)(?!\p{L})/iu;

/** The word of a heading that names a level or a trend; none beside a word for samples, as in `raw amplitude`. */
export function levelWordIn(heading: string): string | undefined {
  return sampled.test(heading) ? undefined : level.exec(heading)?.[0];
}

const signal =
  /(?:^|[^\p{L}])((?:[munµμ]V|mv|MV|(?:(?:milli|micro)[ -]?)?volts?|mA|milliamps?|pC|ADC|counts)(?:\/[\p{L}\d/]+)?|V\/[\p{L}\d/]+)(?=$|[^\p{L}])|\[\s*(V)\s*\]/u;

/** Volts, amperes and shares in words, in any prefix and letters; `amp` may be an amplitude, but not beside a signal. */
const volts = String.raw`(?:(?:nano|micro|milli|centi|kilo|mega)[ -]?|[nu\u00b5\u03bcmk])?volts?`;
const others = String.raw`(?:(?:nano|micro|milli|kilo)[ -]?|[nu\u00b5\u03bcmk])?amp(?:s|[e\u00e8]re?s?)?|pct|per ?cent(?:age)?|prozent|voltages?`;
const inVolts = new RegExp(`(?<![\\p{L}\\d])${volts}(?!\\p{L})`, "iu");
const inWords = new RegExp(`(?<!\\p{L})(?:${volts}|${others})(?!\\p{L})`, "giu");

/** The unit of a signal that a heading names, which no level is in; V alone is as often a direction, but for `[V]`. */
export function signalIn(heading: string): string | undefined {
  const [, unit, volt] = signal.exec(heading) ?? [];
  return unit ?? volt ?? inVolts.exec(heading)?.[0];
}

const ofDetector = "(?:true )?(?:[Pp][Kk]|[Pp]-?[Pp]|[Pp]eak|PEAK|[Rr][Mm][Ss]|[Aa]vg|AVG|[Dd][Cc]|AC)";
const unitOfSignal = "[pnum\u00b5\u03bckM]?[VA]|[mk]v|ma|KV|%|counts|pC";
const signalPlace = new RegExp(
  `(?:^|[([{<,;/|_]|(?<!\\p{L})in )\\s*(${unitOfSignal})(?:[ _-]${ofDetector}.*)?\\s*(?=$|[)\\]}>,;|/])|(?<![\\p{L}\\d])(${unitOfSignal})[ _-]?${ofDetector}(?!\\p{L})|(%)`,
  "gu",
);

/** All units of a signal that stand in a heading where a unit does, for a column that is known to be a signal: V too. */
export function signalUnitsIn(heading: string): string[] {
  const symbols = [...heading.matchAll(signalPlace)].map(
    ([, placed, typed, share]) => (placed ?? typed ?? share) as string,
  );
  return [...symbols, ...[...heading.replaceAll("_", " ").matchAll(inWords)].map(([word]) => word)];
}

/** One spelling for all of a unit of a signal: `volts` is V, and `per cent` is %. */
function plainSignal(unit: string): string {
  const plain = unit
    .toLowerCase()
    .replace(/^(milli|kilo|nano)[ -]?/, (prefix) => prefix[0] as string)
    .replace(/^micro[ -]?|^[\u00b5\u03bc]/, "u");
  return plain
    .replace(/volts?$/, "v")
    .replace(/amp(?:[e\u00e8]re?)?s?$/, "a")
    .replace(/^(?:per(?: ?cent(?:age)?)?|pct|prozent)$/, "%");
}

/** Whether a heading's unit of a signal is the one that is told; a voltage is one in any volts. */
export function isSameSignal(written: string, told: string): boolean {
  const [a, b] = [plainSignal(written), plainSignal(told)];
  return a === b || (/^voltages?$/.test(a) && /v$/.test(b));
}
