import type { CommandPage } from "../options/command-page";
import { failFrom } from "../options/fail-from";
import { limits } from "../options/limits-option";
import { chartOptions, plot } from "../options/picture-options";
import { confirmed, digits, explain, fileOptions, full, json, machine, schemeFound } from "../options/shared-options";

/** The page of `overall`. */
export const overallPage = {
  summary: "the overall level of a file of samples, in any unit, with its highest lines and its zone",
  usage: "veladis overall <file> --unit <unit> [--rate <samples a second>]",
  does: "The overall level of a sampled vibration within a band, and its highest lines. The level is computed from the samples, frequency by frequency: no single frequency is assumed.",
  examples: [
    "veladis overall fan.csv --rate 5120 --unit g",
    "veladis overall logged.csv --unit g --column DE --column NDE",
    'veladis overall fans.csv --column 2 --rate 5120 --unit g --to "mm/s rms, um pp, g pk"',
    'veladis overall pump.f32 --rate 25600 --unit m/s2 --band 2-1000 --speed "2960 r/min"',
    "veladis overall pump.raw --format int16 --scale 0.00048828 --rate 25600 --unit g",
    'veladis overall pump.f64 --rate 25600 --unit g --machine "pump 90 kW 2960 r/min category II"',
    'veladis overall --spectrum booster-lines.csv --window hann --speed "1180 r/min"',
    'veladis overall --density shaker-profile.csv --to "g rms, mm/s rms"',
  ],
  words: [
    [
      "files",
      "delimited text (one column, or --column; a header is not needed; remarks above the first sample are passed over), Parquet (.parquet, with the package hyparquet), WAVE (.wav), or raw numbers: float32, float64, int16, int32 (endings .f32 .f64 .i16 .i32); without a file, what is piped in",
    ],
  ],
  texts: { most: 1, what: "one file" },
  options: {
    spectrum: {
      help: "the file holds lines of a spectrum (frequency and amplitude), not samples; with --window, --noise-bandwidth or --tones",
    },
    density: {
      help: "the file holds the points of a spectral density, with straight lines between them on logarithmic axes",
    },
    rate: {
      argument: "<n>",
      help: "sampling rate in Hz",
      example: "25600",
      otherwise: "that of the times or of the WAVE file",
    },
    unit: {
      argument: "<unit>",
      help: "unit of the samples: g, m/s2, mm/s, um, ...; of lines with their detector, of a density g2/Hz",
      example: "g",
      list: "units",
    },
    to: {
      argument: "<types>",
      help: "what to answer in",
      example: '"mm/s rms, um pp"',
      otherwise: "mm/s rms; of a density its own unit, rms",
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
      otherwise: "none; of a spectrum asked",
    },
    "noise-bandwidth": {
      argument: "<n>",
      help: "with --spectrum: equivalent noise bandwidth of a window without a name here, in lines",
      example: "1.8",
    },
    tones: {
      help: "with --spectrum: each row is a tone of its own at its whole size, as in a list of peaks",
    },
    "at-column": {
      argument: "<name>",
      help: "with --spectrum or --density: the column of frequencies",
      example: "frequency",
      otherwise: "the one that its heading tells, or the first of two",
    },
    "at-unit": {
      argument: "<unit>",
      help: "unit of the frequencies: Hz, r/min, ..., or orders with --speed",
      example: "Hz",
      list: "frequency units",
      otherwise: "that of the heading",
    },
    "slope-column": {
      argument: "<name>",
      help: "with --density: slopes in dB an octave, each from its row to the next",
      example: "slope",
    },
    detrend: {
      argument: "<what>",
      help: "what is taken off: mean, linear or none",
      example: "linear",
      list: "trends",
      otherwise: "mean",
    },
    causal: { help: "by the causal filter of a stream; so are records beyond 4.2 million samples" },
    column: {
      argument: "<name>",
      help: "column by name or number, or channel of a WAVE file; may be given several times, and each is answered",
      example: "2",
      several: true,
    },
    time: {
      argument: "<column>",
      help: "column of times, which say the rate; even within 1 % of a step or their last digit",
      example: "time",
      otherwise: "without --rate the one that its heading tells",
    },
    resample: {
      help: "uneven times: samples at even ones from a cubic spline, up to the frequency that it is good to",
    },
    waveform: {
      help: "the column holds samples of the waveform, although its heading names a level, a detector or a trend",
    },
    ...fileOptions,
    format: {
      argument: "<name>",
      help: "csv, parquet, wav, float32, float64, int16 or int32, if the ending does not say it",
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
      help: "what a stored number is multiplied with to be in the unit (full scale of floating-point WAVE is 1)",
      example: "0.00048828",
    },
    lines: { argument: "<n>", help: "how many lines of the spectrum", example: "3", otherwise: "5" },
    speed: {
      argument: "<speed>",
      help: "shaft speed, for the lines at its multiples; also of the machine that is judged, where its words say none",
      example: '"2960 r/min"',
    },
    orders: {
      argument: "<list>",
      help: "multiples of --speed to show",
      example: "1,2,12",
      otherwise: "1 to 4, those that the record holds",
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
