export { joinedPeaks, parseSentence, type Sentence } from "./sentence";
