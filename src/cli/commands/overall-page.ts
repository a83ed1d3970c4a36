import type { CommandPage } from "../options/command-page";
import { failFrom } from "../options/fail-from";
import { limits } from "../options/limits-option";
import { chartOptions, plot } from "../options/picture-options";
import { confirmed, digits, explain, fileOptions, full, json, machine, schemeFound } from "../options/shared-options";

/** The page of `overall`. */
export const overallPage = {
  summary: "the overall level of a file of samples, in any unit, with its highest lines and its zone",
  usage: "veladis overall <file> --rate <samples a second> --unit <unit>",
  does: "The overall level of a sampled vibration within a band, and its highest lines. The level is computed from the samples, frequency by frequency: no single frequency is assumed.",
  examples: [
    "veladis overall fan.csv --rate 5120 --unit g",
    'veladis overall fans.csv --column 2 --rate 5120 --unit g --to "mm/s rms, um pp, g pk"',
    'veladis overall pump.f32 --rate 25600 --unit m/s2 --band 2-1000 --speed "2960 r/min"',
    "veladis overall pump.raw --format int16 --scale 0.00048828 --rate 25600 --unit g",
    'veladis overall pump.f64 --rate 25600 --unit g --machine "pump 90 kW 2960 r/min category II"',
  ],
  words: [
    [
      "files",
      "delimited text (one column, or --column; a header is not needed; remarks above the first sample are passed over), or raw numbers: float32, float64, int16, int32 (endings .f32 .f64 .i16 .i32); without a file, what is piped in",
    ],
  ],
  texts: { most: 1, what: "one file" },
  options: {
    rate: { argument: "<n>", help: "sampling rate in Hz", example: "25600" },
    unit: { argument: "<unit>", help: "unit of the samples: g, m/s2, mm/s, um, ...", example: "g", list: "units" },
    to: {
      argument: "<types>",
      help: "what to answer in",
      example: '"mm/s rms, um pp"',
      default: "mm/s rms",
      list: "types",
    },
    band: {
      argument: "<low-high>",
      help: "band: 2-1000 in Hz, or with units",
      example: '"10 Hz to 1 kHz"',
      otherwise: "that of the scheme or 10-1000",
    },
    edges: {
      argument: "<rule>",
      help: "ideal, or 3dB as an instrument has them",
      example: "3dB",
      list: "edges",
      otherwise: "ideal",
    },
    order: { argument: "<n>", help: "order of the -3 dB edges", example: "4", otherwise: "3" },
    window: {
      argument: "<name>",
      help: "where tones do not fit the record; RMS values only",
      example: "hann",
      list: "windows",
      otherwise: "none",
    },
    detrend: {
      argument: "<what>",
      help: "what is taken off: mean, linear or none",
      example: "linear",
      list: "trends",
      otherwise: "mean",
    },
    causal: { help: "by the causal filter of a stream; so are records beyond 4.2 million samples" },
    column: { argument: "<name>", help: "column of a CSV file, by name or number", example: "2" },
    waveform: {
      help: "the column holds samples of the waveform, although its heading names a level, a detector or a trend",
    },
    ...fileOptions,
    format: {
      argument: "<name>",
      help: "csv, float32, float64, int16 or int32, if the ending does not say it",
      example: "float32",
      list: "formats",
    },
    endian: {
      argument: "<end>",
      help: "the end of a stored number that comes first",
      values: ["little", "big"],
      default: "little",
    },
    scale: {
      argument: "<n>",
      help: "what a stored number is multiplied with to be in the unit",
      example: "0.00048828",
    },
    lines: { argument: "<n>", help: "how many lines of the spectrum", default: "5" },
    speed: {
      argument: "<speed>",
      help: "shaft speed, for the lines at 1x to 4x",
      example: '"2960 r/min"',
    },
    machine: { ...machine, help: "the machine in words, to judge the level by the scheme that is for it" },
    scheme: schemeFound,
    limits,
    background: {
      argument: "<reading>",
      help: "the level with the machine stopped: whether this one may be judged",
      example: '"0.4 mm/s rms"',
    },
    confirmed,
    full,
    digits,
    explain,
    ...chartOptions,
    plot,
    "fail-from": failFrom,
    json,
  },
  notes: [
    "Lines are interpolated to their own frequency and size; --chart and --plot show the bins, which are lower beside a line.",
  ],
} as const satisfies CommandPage;
