import { parseSentence } from "../../src/sentence/index";
import { holdWording } from "../refusals/hold-wording";

holdWording("sentence", {
  "an empty line": () => parseSentence(" "),
  "a line of any length": () => parseSentence(`1 mm/s rms to ${"mil pp, ".repeat(200)}`),
  "nothing to convert to": () => parseSentence("0.25 in/s pk to"),
  "to twice": () => parseSentence("0.25 in/s pk to mm/s rms to mil pp"),
  "a fraction that is none": () => parseSentence("1 5/4 ips pk"),
  "a crest factor with a decimal comma": () => parseSentence("1 mm/s rms crest factor 3,5 to mm/s pk"),
});
