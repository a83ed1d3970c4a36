export { defineDetector, type OwnDetector } from "./own-detector";
export type { OwnArguments, OwnQuantities, OwnType } from "./own-types";
export { defineUnit, type OwnUnit } from "./own-unit";
export { type OwnConverter, type Toolkit, type ToolkitParts, toolkit } from "./toolkit";
