export { plainSpelling } from "./plain-spelling";
export { CREST_FACTOR, joinedPeaks, parseSentence, type Sentence } from "./sentence";
