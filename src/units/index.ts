export {
  type Unit,
  type UnitQuantities,
  type UnitSpelling,
  type UnitSymbol,
  units,
} from "./catalogue";
export { type Quantity, quantities } from "./quantity";
export { findUnit, unitSymbol } from "./unit-symbol";
