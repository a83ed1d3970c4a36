import {
  inPlace,
  parseNumeral,
  requireChoice,
  requireGiven,
  requireNonNegative,
  requireText,
  shown,
  splitNumeral,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Detector, detectorSymbol, findDetector } from "../detectors/index";
import { type Assumption, checkedSteps, type LoopState, loopStates, type Step, significant } from "../reading/index";

/** Voltages by symbol: how many of each make a volt. */
const perVolt = /* @__PURE__ */ Object.freeze({
  V: 1,
  mV: 1000,
  uV: 1e6,
} as const);

/** The symbol of a voltage. */
export type Voltage = keyof typeof perVolt;

/** What a voltmeter shall show: voltage and detector, e.g. `"mV rms"`. */
export type VoltageType = `${Voltage} ${Detector}`;

/** A voltage with its detector, as a sensor gives it. */
export interface VoltageReading {
  readonly value: number;
  readonly unit: Voltage;
  readonly detector: Detector;
  /** Where in the range of its loop the reading lay, if it came by one. */
  readonly state?: LoopState;
  /** All that was assumed on the way to it; nothing for a voltage as it was given. */
  readonly assumed?: readonly Assumption[];
  /** The steps that led to it; left out for a voltage as it was given. */
  readonly history?: readonly Step[];
}

const FORM = 'a voltage with its detector such as "70.7 mV rms"';
const TYPE = 'a unit of voltage and a detector such as "mV rms"';

/** The symbol of the voltage a text names. */
export function voltageSymbol(spelling: string): Voltage {
  const plain = spelling.normalize("NFKC").replace("μ", "u");
  if (Object.hasOwn(perVolt, plain)) return plain as Voltage;
  throw new VeladisError("unknown-unit", {
    expected: "a unit of voltage",
    received: shown(spelling),
    parameter: "spelling",
    allowed: Object.keys(perVolt),
  });
}

/** The value in another unit of voltage. */
export function voltageIn(value: number, from: Voltage, to: Voltage): number {
  return (value * perVolt[to]) / perVolt[from];
}

/** Whether something is a voltage and no vibration, by its unit. */
export function isVoltage(reading: object): reading is VoltageReading {
  const { unit } = reading as Partial<VoltageReading>;
  return typeof unit === "string" && Object.hasOwn(perVolt, unit);
}

/** A voltage that was taken apart, held against the tables. */
export function checkedVoltage(reading: VoltageReading): VoltageReading {
  const { value, unit, detector, state, history } = requireGiven(reading, FORM, { parameter: "reading" });
  return {
    value: requireNonNegative(value, "a voltage of zero or more", { option: "value" }),
    unit: inPlace({ option: "unit" }, () => voltageSymbol(requireText(unit, FORM))),
    detector: inPlace({ option: "detector" }, () => detectorSymbol(requireText(detector, FORM))),
    ...(state !== undefined && { state: requireChoice(state, loopStates, "the state of a loop", { option: "state" }) }),
    ...(history !== undefined && { history: checkedSteps(history) }),
  };
}

/** What a voltmeter shall show, taken apart. */
export function voltageType(as: string): Pick<VoltageReading, "unit" | "detector"> {
  const found = /^(\S+)\s+(\S.*)$/.exec(requireText(as, TYPE, { parameter: "as" }).trim());
  const detector = found && findDetector(found[2] as string);
  if (found && detector) return { unit: voltageSymbol(found[1] as string), detector };
  throw new VeladisError(found ? "unknown-detector" : "syntax", {
    expected: TYPE,
    received: shown(as),
    parameter: "as",
  });
}

/** The voltage reading that a text says, e.g. `"70.7 mV rms"`. */
export function parseVoltage(reading: string): VoltageReading {
  const written = requireText(reading, FORM, { parameter: "reading" }).trim();
  const [value, rest] = splitNumeral(written);
  if (value === "" || rest === "" || written.length > 80) {
    throw new VeladisError("syntax", { expected: FORM, received: shown(reading), parameter: "reading" });
  }
  const type = voltageType(rest);
  return { value: requireNonNegative(parseNumeral(value), "a voltage of zero or more"), ...type };
}

/**
 * A voltage as an engineer writes it.
 *
 * @param digits - significant digits; 3 if not given
 * @example
 * ```ts
 * import { formatVoltage, sensor } from "veladis/sensor";
 *
 * formatVoltage(sensor("100 mV/g").voltage("1 g pk", "mV rms")); // => "70.7 mV rms"
 * ```
 */
export function formatVoltage(reading: VoltageReading, digits?: number): string {
  return withParameters({ digits, reading }, () => {
    const { value, unit, detector } = checkedVoltage(reading);
    return `${significant(value, digits)} ${unit} ${detector}`;
  });
}
