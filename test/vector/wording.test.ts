import {
  convertVector,
  differenceOfVectors,
  formatVector,
  parseVector,
  shaftAbsolute,
  slowRollCompensated,
  sumOfVectors,
  type Vector,
} from "veladis/vector";
import { holdWording } from "../refusals/hold-wording";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const shaft = "40 um pp ∠ 60° at 1x of 5400 r/min";
const slow = "6 um pp ∠ 150° at 1x of 300 r/min";
const parts: Vector = parseVector(shaft);
const of = (other: object) => formatVector({ ...parts, ...other } as Vector);

holdWording("vector", {
  "parseVector, nothing": () => parseVector(undefined as Loose),
  "parseVector, too long": () => parseVector(`${shaft}${" ".repeat(300)}x`),
  "parseVector, no phase": () => parseVector("40 um pp at 1x of 5400 r/min"),
  "parseVector, two phases": () => parseVector("40 um pp ∠ 60° ∠ 70° at 1x of 5400 r/min"),
  "parseVector, no number for the phase": () => parseVector("40 um pp ∠ high at 1x of 5400 r/min"),
  "parseVector, no degrees": () => parseVector("40 um pp ∠ 60 at 1x of 5400 r/min"),
  "parseVector, radians": () => parseVector("40 um pp ∠ 1.05 rad at 1x of 5400 r/min"),
  "parseVector, a lead": () => parseVector("40 um pp ∠ 60° lead at 1x of 5400 r/min"),
  "parseVector, a phase below zero": () => parseVector("40 um pp ∠ -60° at 1x of 5400 r/min"),
  "parseVector, a phase without end": () => parseVector("40 um pp ∠ 1e999° at 1x of 5400 r/min"),
  "parseVector, no order": () => parseVector("40 um pp ∠ 60° at 5400 r/min"),
  "parseVector, an order that is not whole": () => parseVector("40 um pp ∠ 60° at 0.5x of 5400 r/min"),
  "parseVector, no speed": () => parseVector("40 um pp ∠ 60° at 1x"),
  "parseVector, two speeds": () => parseVector("40 um pp ∠ 60° at 1x of 5400 r/min at 1x of 300 r/min"),
  "parseVector, two probes": () => parseVector(`${shaft}, probe 1Y, probe 1X`),
  "parseVector, a true peak": () => parseVector("40 um true pk ∠ 60° at 1x of 5400 r/min"),
  "parseVector, a level": () => parseVector("95 dB re 1 nm/s ∠ 60° at 1x of 5400 r/min"),
  "formatVector, nothing": () => formatVector(undefined as Loose),
  "formatVector, a number": () => formatVector(5 as Loose),
  "formatVector, no options": () => formatVector(shaft, null as Loose),
  "formatVector, an option there is none of": () => formatVector(shaft, { digit: 3 } as Loose),
  "a vector with a part there is none of": () => of({ angle: 60 }),
  "a vector without an amplitude": () => of({ amplitude: undefined }),
  "a vector with a crest factor of no sine": () => of({ amplitude: { ...parts.amplitude, crestFactor: 3 } }),
  "a vector by a loop above its range": () => of({ amplitude: { ...parts.amplitude, state: "above range" } }),
  "a vector without a phase": () => of({ phase: undefined }),
  "a vector with a phase that is no number": () => of({ phase: Number.NaN }),
  "a vector without an order": () => of({ order: undefined }),
  "a vector with a text for the order": () => of({ order: "1" }),
  "a vector without a speed": () => of({ speed: undefined }),
  "a vector with a speed of zero": () => of({ speed: 0 }),
  "a vector with a frequency that is not its order times its speed": () => of({ speed: 80 }),
  "a vector with a comma in the name of its probe": () => of({ probe: "1Y, 1X" }),
  "a vector with a number for its direction": () => of({ direction: 45 }),
  "a vector with no list of what it takes for granted": () => of({ assumedFacts: "one mark" }),
  "a vector with an empty caution": () => of({ cautions: [" "] }),
  "convertVector, to a level": () => convertVector(shaft, "dB re 1 nm/s"),
  "sumOfVectors, one without a phase": () => sumOfVectors(shaft, "30 um pp"),
  "differenceOfVectors, two speeds": () => differenceOfVectors(shaft, slow),
  "differenceOfVectors, two quantities": () => differenceOfVectors(shaft, "4 mm/s pk ∠ 30° at 1x of 5400 r/min"),
  "slowRollCompensated, at 2x": () => slowRollCompensated(shaft.replace("1x", "2x"), slow.replace("1x", "2x")),
  "slowRollCompensated, a second time": () => slowRollCompensated(slowRollCompensated(shaft, slow), slow),
  "slowRollCompensated, of velocities": () =>
    slowRollCompensated(shaft.replace("um pp", "mm/s pk"), slow.replace("um pp", "mm/s pk")),
  "slowRollCompensated, faster than the reading": () => slowRollCompensated(slow, shaft),
  "slowRollCompensated, two probes": () => slowRollCompensated(`${shaft}, probe 1Y`, `${slow}, probe 1X`),
  "slowRollCompensated, no options": () => slowRollCompensated(shaft, slow, null as Loose),
  "slowRollCompensated, an option there is none of": () => slowRollCompensated(shaft, slow, { limits: 5 } as Loose),
  "slowRollCompensated, a limit of velocity": () => slowRollCompensated(shaft, slow, { limit: "4 mm/s rms" }),
  "slowRollCompensated, a limit of zero": () => slowRollCompensated(shaft, slow, { limit: "0 um pp" }),
  "shaftAbsolute, a relative velocity": () => shaftAbsolute(shaft.replace("um pp", "mm/s pk"), shaft),
  "shaftAbsolute, two directions": () => shaftAbsolute(`${shaft}, direction up`, `${shaft}, direction left`),
});
