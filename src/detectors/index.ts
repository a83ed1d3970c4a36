export {
  type Detector,
  type DetectorEntry,
  type DetectorFacts,
  detectorFacts,
  detectors,
  type RunningSums,
} from "./catalogue";
export { detectorSymbol, findDetector, unknownDetector } from "./detector-symbol";
export { areOfSine, requireRelated } from "./related";
export { sineRatio } from "./sine-ratio";
export { suits } from "./suits";
