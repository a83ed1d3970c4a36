export { type ErrorDetail, shown, VeladisError } from "./error";
export { errorCodes, type VeladisErrorCode } from "./error-codes";
export { finite, nonNegative, positive, text } from "./guards";
export { memo } from "./memo";
export { nearest } from "./nearest";
export { numeral, splitNumeral } from "./numeral";
export type { Ratio } from "./ratio";
export type { Provenance, Source } from "./source";
