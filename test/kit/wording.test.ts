import { defineDetector, defineUnit, toolkit } from "veladis/kit";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;

const source = { title: "workshop sheet 3", provenance: "memory" };
const line = { symbol: "lin/s", quantity: "velocity", num: 127, den: 60_000, name: "line per second", source };
const half = {
  symbol: "half",
  num: 1,
  den: 2,
  ofSamples: (x: Loose) => Math.max(...x) / 2,
  name: "half the peak",
  source,
};
const unit = (parts: object) => defineUnit({ ...line, ...parts } as Loose);
const detector = (parts: object) => defineDetector({ ...half, ...parts } as Loose);
const kit: Loose = toolkit({ units: [line], detectors: [half] } as Loose);
const fine: Loose = toolkit({ units: [{ ...line, den: 2 ** 52 + 1 }], detectors: [] } as Loose);

const cases: Cases = {
  "defineUnit, nothing": () => defineUnit(undefined as Loose),
  "defineUnit, a part that it has not": () => unit({ ratio: 2 }),
  "defineUnit, a number for the symbol": () => unit({ symbol: 3 }),
  "defineUnit, a symbol of two words": () => unit({ symbol: "line s" }),
  "defineUnit, a symbol that is built in": () => unit({ symbol: "ips" }),
  "defineUnit, another symbol that is built in": () => unit({ also: ["microns"] }),
  "defineUnit, a text for the other symbols": () => unit({ also: "line" }),
  "defineUnit, no such quantity": () => unit({ quantity: "jerk" }),
  "defineUnit, a ratio that is not exact": () => unit({ num: 0.1 }),
  "defineUnit, a text for the ratio": () => unit({ den: "2" }),
  "defineUnit, no name": () => unit({ name: undefined }),
  "defineUnit, a source of no known grade": () => unit({ source: { title: "x", provenance: "heard" } }),
  "defineDetector, a part that it has not": () => detector({ spoken: [] }),
  "defineDetector, a symbol that is built in": () => detector({ symbol: "peak" }),
  "defineDetector, a power of pi that is none": () => detector({ pi: 0.5 }),
  "defineDetector, a power of the root of two that is none": () => detector({ rootTwo: 9 }),
  "defineDetector, a ratio of zero": () => detector({ num: 0 }),
  "defineDetector, a ratio over a broken number": () => detector({ den: 1.5 }),
  "defineDetector, no function": () => detector({ ofSamples: 1 }),
  "defineDetector, a function that gives no number": () => detector({ ofSamples: () => "1" }),
  "defineDetector, a function that contradicts the ratio": () => detector({ den: 1 }),
  "defineUnit, no symbol": () => unit({ symbol: undefined }),
  "defineUnit, no ratio": () => unit({ num: undefined }),
  "defineUnit, an area": () => unit({ symbol: "in²" }),
  "defineUnit, one symbol twice": () => unit({ also: ["lines/s", "lines/s"] }),
  "defineUnit, an empty name": () => unit({ name: "" }),
  "defineDetector, nothing for its function": () => detector({ ofSamples: undefined }),
  "defineDetector, a function that throws": () =>
    detector({
      ofSamples: () => {
        throw new TypeError("no samples here");
      },
    }),
  "toolkit, nothing": () => toolkit(undefined as Loose),
  "toolkit, a part that it has not": () => toolkit({ kinds: [] } as Loose),
  "toolkit, a unit alone": () => toolkit({ units: line } as Loose),
  "toolkit, a detector alone": () => toolkit({ detectors: half } as Loose),
  "toolkit, two of one name": () => toolkit({ units: [line, line] } as Loose),
  "toolkit, a unit and a detector of one name": () =>
    toolkit({ units: [{ ...line, symbol: "half" }], detectors: [half] } as Loose),
  "convert, no text": () => kit.convert(1, 3, "mm/s pk"),
  "convert, no such unit": () => kit.convert(1, "lim/s half", "mm/s pk"),
  "convert, no such detector": () => kit.convert(1, "lin/s haft", "mm/s pk"),
  "convert, no detector": () => kit.convert(1, "lin/s", "mm/s pk"),
  "convert, below zero": () => kit.convert(-1, "lin/s pk", "mm/s pk"),
  "convert, another quantity without frequency": () => kit.convert(1, "lin/s pk", "um pp"),
  "convert, a crest factor for an own detector": () => kit.convert(1, "lin/s half", "mm/s pk", { crestFactor: 3 }),
  "convert, an own detector to a true peak": () => kit.convert(1, "lin/s half", "mm/s true pk"),
  "convert, a ratio beyond 2^53": () => fine.convert(1, "lin/s pp", "mm/s true pk"),
  "amplitude, to an own unit": () => kit.amplitude(1, "mm/s pk", "lin/s pk"),
  "read, no samples": () => kit.read([], "half"),
  "read, a text for the samples": () => kit.read("1 2", "half"),
  "read, not a number": () => kit.read([1, Number.NaN], "half"),
  "read, no such detector": () => kit.read([1, 2], "haft"),
  "read, below zero": () => {
    const ofSamples = (samples: ArrayLike<number>) => (samples.length < 9 ? -1 : half.ofSamples(samples));
    (toolkit({ detectors: [{ ...half, ofSamples }] } as Loose) as Loose).read([1, 2], "half");
  },
};

holdWording("kit", cases);
