import {
  type ErrorPlace,
  numbersOf,
  requireChoice,
  requireFinite,
  requireKnownOptions,
  requireNonNegative,
  shown,
  VeladisError,
} from "../core/index";
import type { Zone } from "./kinds";

function refuse(value: number, isLevel: boolean, where = "", place?: ErrorPlace): void {
  if (isLevel) requireFinite(value, `a level in dB${where}`, place);
  else requireNonNegative(value, `an amplitude of zero or more${where}`, place);
}

/** What {@link CompiledClassifier.array} does with gaps. */
export interface ZonesOptions {
  /** Whether NaN, as of a gap in a record, is refused or becomes 255, which is no zone; refused if not given. */
  readonly nan?: "refuse" | "keep";
}

const VALUE: ErrorPlace = /* @__PURE__ */ Object.freeze({ parameter: "value" });

const NONE: ZonesOptions = /* @__PURE__ */ Object.freeze({});

/** What stands for a gap in a list of zones. */
const NO_ZONE = 255;

function requireNaN(options: ZonesOptions): ZonesOptions["nan"] {
  const { nan } = requireKnownOptions(
    options,
    { nan: true },
    { what: "an option of a batch", form: 'options such as { nan: "keep" }' },
  );
  if (nan === undefined) return nan;
  return requireChoice(nan, ["refuse", "keep"], "what becomes of NaN", { parameter: "options", option: "nan" });
}

/** The number of the zone of a value, and of every value of an array, by up to three bounds without a loop. */
export function zoneLadder(bounds: readonly number[], zones: readonly Zone[], isLevel: boolean) {
  const lowest = isLevel ? -Number.MAX_VALUE : 0;
  const [a = Number.MAX_VALUE, b = Number.MAX_VALUE, c = Number.MAX_VALUE] = bounds;
  const highest = Number.MAX_VALUE;
  const few = bounds.length <= 3;
  const more = bounds.slice(3);
  const [za, zb, zc, zd] = zones as [Zone, Zone, Zone, Zone];
  const index = (value: number): number => {
    if (typeof value !== "number" || !(value >= lowest && value <= highest)) refuse(value, isLevel, "", VALUE);
    if (value <= a) return 0;
    if (value <= b) return 1;
    if (value <= c) return 2;
    let at = 3;
    for (const bound of more) if (value > bound) at++;
    return at;
  };
  // the same ladder once more: a list of zones to look an index up in would cost a third
  const judge = (value: number): Zone => {
    if (typeof value !== "number" || !(value >= lowest && value <= highest)) refuse(value, isLevel, "", VALUE);
    if (value <= a) return za;
    if (value <= b) return zb;
    if (value <= c) return zc;
    return few ? zd : (zones[index(value)] as Zone);
  };
  const array = (source: ArrayLike<number>, into?: Uint8Array, options: ZonesOptions = NONE): Uint8Array => {
    const values = numbersOf(source, "a list of readings", "source");
    const keepsNaN = requireNaN(options) === "keep";
    const target = into ?? new Uint8Array(values.length);
    requireArrays(values, target);
    requireClear(values, target);
    // nothing but readings keeps this 0: a branch in the loop would cost more than the judgement
    let fault = 0;
    for (let i = 0; i < values.length; i++) {
      const value = values[i] as number;
      fault += isLevel ? value - value : Math.abs(value) - value;
      target[i] = Number(value > a) + Number(value > b) + Number(value > c);
    }
    if (fault !== 0) refuseFirst(values, lowest, isLevel, keepsNaN);
    for (const bound of more) {
      for (let i = 0; i < values.length; i++) {
        target[i] = (target[i] as number) + Number((values[i] as number) > bound);
      }
    }
    if (keepsNaN && fault !== 0) {
      for (let i = 0; i < values.length; i++) if (Number.isNaN(values[i])) target[i] = NO_ZONE;
    }
    return target;
  };
  return { judge, index, array };
}

function refuseFirst(values: Float64Array, lowest: number, isLevel: boolean, keepsNaN: boolean): void {
  const i = values.findIndex(
    (value) => !(value >= lowest && value <= Number.MAX_VALUE) && !(keepsNaN && Number.isNaN(value)),
  );
  if (i < 0) return;
  refuse(values[i] as number, isLevel, ` at index ${i}`, { parameter: "source", index: i });
}

/** Refuses zones that would be written over readings which are not judged yet. */
function requireClear(values: Float64Array, target: Uint8Array): void {
  if (values.buffer !== target.buffer) return;
  const isClear =
    target.byteOffset >= values.byteOffset + values.byteLength ||
    values.byteOffset >= target.byteOffset + target.byteLength;
  if (isClear) return;
  throw new VeladisError("out-of-range", {
    expected: "a target that lies clear of the source",
    received: "one that overlaps it",
    parameter: "target",
  });
}

function requireArrays(values: Float64Array, target: Uint8Array): void {
  if (!(target instanceof Uint8Array)) {
    throw new VeladisError("wrong-type", {
      expected: "a Uint8Array for the zones",
      received: shown(target),
      parameter: "target",
    });
  }
  if (values.length === target.length) return;
  throw new VeladisError("length-mismatch", {
    expected: `a target of ${values.length} elements`,
    received: `one of ${target.length}`,
    parameter: "target",
  });
}
