import { unitSymbol } from "veladis";
import { holdWording } from "../refusals/hold-wording";

holdWording("units", {
  "no text": () => unitSymbol(undefined as unknown as string),
  "an empty text": () => unitSymbol(" "),
  "a unit near one": () => unitSymbol("mn/s"),
  "a spoken unit near one": () => unitSymbol("milimetres"),
  "a unit near none": () => unitSymbol("furlong"),
});
