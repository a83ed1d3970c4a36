import { detectorSymbol } from "veladis";
import { holdWording } from "../refusals/hold-wording";

holdWording("detectors", {
  "no text": () => detectorSymbol(undefined as unknown as string),
  "an empty text": () => detectorSymbol(""),
  "a detector near one": () => detectorSymbol("rmz"),
  "a detector near none": () => detectorSymbol("maximum hold"),
});
