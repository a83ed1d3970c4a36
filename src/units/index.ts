export { type Unit, type UnitFacts, type UnitSymbol, unitFacts, units } from "./catalogue";
export { type Quantity, quantities } from "./quantity";
export type { UnitQuantities, UnitSpelling } from "./spelling";
export { derivativeOrder, unitFactor } from "./unit-factor";
export { findUnit, unitSymbol } from "./unit-symbol";
