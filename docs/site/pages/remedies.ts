import type { VeladisErrorCode } from "../../../src/core/index";

/** What to do about each error. */
export const remedies: Readonly<Record<VeladisErrorCode, string>> = {
  "wrong-type": "hand over what `expected` names: a number where a text came, a list where one value came",
  syntax: "write it in the form of the example in `expected`",
  "not-a-number":
    "write digits with a point for decimals; find where a NaN entered the data, which a failed sensor or an empty cell may be",
  "not-finite": "look for a division by zero or a wrong unit upstream",
  negative: "an amplitude, a time or a mass has no sign: take the size of it, or find the fault in the data",
  "not-positive": "give a value above zero; zero here usually stands for a value that is not known",
  "out-of-range": "keep within the range in `expected`; a machine outside of a table needs another table",
  "unknown-unit": "take one of `didYouMean` or `allowed`",
  "unknown-detector": "take `pk`, `pp`, `rms` or `avg`; where a device does not say which, look in its manual",
  "unknown-frequency-unit": "take `Hz`, `r/min`, `rad/s` or another of `allowed`",
  "unknown-reference": "name a reference of `allowed`, or write it out, as in `dB re 1e-9 m/s`",
  "unknown-option": "take one of `didYouMean` or `allowed`",
  "missing-unit": "write the unit after the number",
  "missing-detector":
    "write the detector after the unit, as in `mm/s rms`; never guess it: peak and RMS of a sine differ by 41 %",
  "missing-frequency":
    "give the frequency of the vibration, as in `at 1500 r/min`; without it velocity tells nothing of displacement",
  "missing-reference": "write what 0 dB is, as in `dB re 1e-9 m/s`: references in use differ by 20 dB and more",
  "missing-option": "add the argument or option that `expected` names: the call or the command line lacks it",
  "missing-fact":
    "ask for the fact that `expected` and, of a machine, `fact` name; `allowed` lists the answers where they are few",
  "wrong-quantity": "convert first, with a frequency, or give a value in the quantity asked for",
  "wrong-detector": "convert one of the readings first, which assumes a sine",
  "wrong-frequency": "combine RMS readings of different frequencies by the root of the sum of squares",
  "not-a-sine": "leave the crest factor out, or stay within one quantity and between peak and RMS",
  "length-mismatch": "hand over arrays of one length; look for a row that was lost",
  unreadable: "look at the name, at the leave to read, and that nothing else writes the file meanwhile",
  unwritable: "look at the folder, at the leave to write in it, and at the room on the disk",
  "sensor-fault": "check sensor, cable and loop before the machine; the level is not known until then",
};
