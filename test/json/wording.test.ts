import { convertAmplitude } from "veladis";
import { fromJson, toJson } from "veladis/json";
import { judge } from "veladis/severity";
import { spectrum } from "veladis/signal";
import { holdWording } from "../refusals/hold-wording";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;

const reading = convertAmplitude("0.25 in/s pk", "mm/s rms");
const verdict = judge("3.81 mm/s rms", "pump 90 kW 2980 r/min category II rigid");
const read = (change: (envelope: Loose) => void, kind: Loose = "amplitude", answer: Loose = reading) => {
  const envelope = JSON.parse(toJson(kind, answer));
  change(envelope);
  return fromJson(kind, JSON.stringify(envelope));
};
const inVerdict = (change: (envelope: Loose) => void) => read(change, "verdict", verdict);
const deep = (levels: number): Loose => (levels === 0 ? 1 : [deep(levels - 1)]);

holdWording("json", {
  "toJson, a kind there is none of": () => toJson("verdikt" as Loose, verdict),
  "toJson, no kind": () => toJson(undefined as Loose, verdict),
  "toJson, no answer": () => toJson("verdict", undefined as Loose),
  "toJson, an answer of another kind": () => toJson("verdict", reading as Loose),
  "toJson, no list": () => toJson("amplitude[]", reading as Loose),
  "toJson, a text for a number": () => toJson("amplitude", { ...reading, value: "5" } as Loose),
  "toJson, no number": () => toJson("amplitude", { ...reading, value: Number.NaN }),
  "toJson, a number for a text": () => toJson("amplitude", { ...reading, unit: 5 } as Loose),
  "toJson, a number for true or false": () => toJson("verdict", { ...verdict, verified: 1 } as Loose),
  "toJson, samples as a list": () =>
    toJson("spectrum", { ...spectrum([1, 2, 1, 2], { rate: 4, unit: "g" }), values: [1] } as Loose),
  "toJson, a function beside": () => toJson("amplitude", { ...reading, note: () => 1 } as Loose),
  "toJson, a date beside": () => toJson("amplitude", { ...reading, note: new Date(0) } as Loose),
  "toJson, no number beside": () => toJson("amplitude", { ...reading, note: Number.NaN } as Loose),
  "toJson, too deep beside": () => toJson("amplitude", { ...reading, note: deep(40) } as Loose),
  "fromJson, no text": () => fromJson("amplitude", undefined as Loose),
  "fromJson, no JSON": () => fromJson("amplitude", '{"version":1,'),
  "fromJson, JSON of something else": () => fromJson("amplitude", "5"),
  "fromJson, no version": () => fromJson("amplitude", "{}"),
  "fromJson, a version to come": () => read((one) => (one.version = 2)),
  "fromJson, another kind": () => fromJson("verdict", toJson("amplitude", reading)),
  "fromJson, a kind there is none of": () => fromJson("verdikt" as Loose, toJson("amplitude", reading)),
  "fromJson, no answer": () => read((one) => delete one.value),
  "fromJson, no sources": () => read((one) => delete one.sources),
  "fromJson, no histories": () => read((one) => (one.histories = {})),
  "fromJson, a part that is missing": () => inVerdict((answer) => delete answer.criteria[0].margin),
  "fromJson, a text for a number": () => inVerdict((answer) => (answer.margin.ratio = "1.2")),
  "fromJson, a number beyond what a number holds": () =>
    fromJson("amplitude", toJson("amplitude", reading).replace(/"value":[\d.]+/, '"value":1e999')),
  "fromJson, a number for a text": () => inVerdict((answer) => (answer.headline = 5)),
  "fromJson, a text for true or false": () => inVerdict((answer) => (answer.verified = "yes")),
  "fromJson, a source that is not there": () => inVerdict((answer) => (answer.source = 99)),
  "fromJson, a source that is no object": () => inVerdict(({ sources }) => (sources[0] = "a standard")),
  "fromJson, a source without a title": () => inVerdict(({ sources }) => delete sources[0].title),
  "fromJson, a history that is not there": () => inVerdict((answer) => (answer.history = -1)),
  "fromJson, no list": () => inVerdict((answer) => (answer.criteria = {})),
  "fromJson, no samples": () =>
    read((answer) => (answer.values = 5), "spectrum", spectrum([1, 2, 1, 2], { rate: 4, unit: "g" })),
  "toJson, a key of the envelope": () => toJson("amplitude", { ...reading, version: 2 } as Loose),
  "toJson, a kind that may be left out": () => toJson("amplitude?" as Loose, undefined as Loose),
  "fromJson, no kind": () => fromJson(undefined as Loose, "{}"),
  "fromJson, a key to the prototype": () =>
    fromJson("amplitude", toJson("amplitude", reading).replace('"unit"', '"__proto__":{},"unit"')),
  "fromJson, a reading in a unit there is none of": () => read((answer) => (answer.unit = "mm/z")),
});
