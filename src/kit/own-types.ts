import type { ConvertOptions } from "../amplitude/index";
import type { Detector } from "../detectors/index";
import type { Frequency } from "../frequency/index";
import type { QuantityOf, ReadingType } from "../reading/index";
import type { Quantity, UnitQuantities, UnitSpelling } from "../units/index";
import type { OwnDetector } from "./own-detector";
import type { OwnUnit } from "./own-unit";

/** The quantity of every spelling of own units. */
export type OwnQuantities<Unit extends OwnUnit> = {
  [One in Unit as One extends OwnUnit<infer Symbol, Quantity, infer Also> ? Symbol | Also : never]: One["quantity"];
};

/** Every reading type of a toolkit: those that are built in, and own units and detectors with all others. */
export type OwnType<Unit extends OwnUnit, Reads extends OwnDetector> =
  | ReadingType
  | `${keyof OwnQuantities<Unit> & string} ${Detector | Reads["symbol"]}`
  | `${UnitSpelling} ${Reads["symbol"]}`;

/** The quantity that a type of a toolkit measures. */
type QuantityIn<Unit extends OwnUnit, Reads extends OwnDetector, Type extends string> = Type extends ReadingType
  ? QuantityOf<Type>
  : Type extends `${infer Own extends keyof OwnQuantities<Unit> & string} ${string}`
    ? OwnQuantities<Unit>[Own]
    : Type extends `${infer Known extends UnitSpelling} ${Reads["symbol"]}`
      ? UnitQuantities[Known]
      : Quantity;

/** The options argument of a conversion: with `at`, unless both types measure one quantity. */
export type OwnArguments<Unit extends OwnUnit, Reads extends OwnDetector, From extends string, To extends string> = [
  QuantityIn<Unit, Reads, From>,
] extends [QuantityIn<Unit, Reads, To>]
  ? [QuantityIn<Unit, Reads, To>] extends [QuantityIn<Unit, Reads, From>]
    ? [options?: ConvertOptions]
    : [options: ConvertOptions & { readonly at: Frequency }]
  : [options: ConvertOptions & { readonly at: Frequency }];
