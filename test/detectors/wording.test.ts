import { detectorSymbol } from "veladis";
import { unknownDetector } from "../../src/detectors/index";
import { holdWording } from "../refusals/hold-wording";

holdWording("detectors", {
  "no text": () => detectorSymbol(undefined as unknown as string),
  "an empty text": () => detectorSymbol(""),
  "a detector near one": () => detectorSymbol("rmz"),
  "a detector near none": () => detectorSymbol("maximum hold"),
  "a detector where a place asks for one": () => {
    throw unknownDetector("maximum hold", "a detector after the unit");
  },
});
