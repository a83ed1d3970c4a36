export { parseSentence, type Sentence } from "./sentence";
