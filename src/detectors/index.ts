export { type Detector, type DetectorEntry, type DetectorFacts, detectorFacts, detectors } from "./catalogue";
export { detectorSymbol, findDetector, unknownDetector } from "./detector-symbol";
