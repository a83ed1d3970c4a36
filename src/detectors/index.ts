export { type Detector, type DetectorEntry, detectors } from "./catalogue";
export {
  detectorSymbol,
  findDetector,
  nearestDetectors,
} from "./detector-symbol";
