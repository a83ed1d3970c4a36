import { convert, detectorSymbol } from "veladis";
import { holdWording } from "../refusals/hold-wording";

holdWording("detectors", {
  "no text": () => detectorSymbol(undefined as unknown as string),
  "an empty text": () => detectorSymbol(""),
  "a true peak by the ratio of a sine": () => convert(3, "g true pk", "g rms", {} as { crestFactor: number }),
  "a true peak as a derived one": () => convert(3, "g true pk", "g pk", { crestFactor: 4 }),
  "a true peak in another quantity": () => convert(3, "g true pk", "mm/s true pk", { at: "50 Hz" }),
  "a detector near one": () => detectorSymbol("rmz"),
  "a detector near none": () => detectorSymbol("maximum hold"),
});
