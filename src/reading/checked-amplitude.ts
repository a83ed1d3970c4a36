import {
  requireChoice,
  requireFinite,
  requireGiven,
  requireList,
  requireNonNegative,
  requirePositive,
  requireText,
  same,
  shown,
  VeladisError,
} from "../core/index";
import { FREQUENCY_FORM } from "../frequency/index";
import { type Amplitude, amplitudeIn, type Level, loopStates } from "./amplitude";
import { type Assumption, assumptionNames } from "./assumptions";
import { checkedSteps } from "./checked-steps";
import { requireCrestFactor } from "./crest-factor";
import { type Made, union } from "./history";
import { isOwnHistory } from "./own-history";
import { parsedType, typeOf } from "./parsed-type";
import { refuseOtherKeys } from "./refuse-other-keys";
import { linearOf } from "./scaled";

/** What a reading looks like, for messages. */
export const FORM = 'a reading such as "0.25 in/s pk at 1500 r/min"';

/** A level belongs to its linear value: the two may differ by float noise only. */
function requireLevel({ value, level, unit }: Amplitude): void {
  const { decibels, re } = requireGiven(level as Level, FORM, { option: "level" });
  requireFinite(decibels, FORM, { option: "level" });
  const type = parsedType(`dB re ${requireText(re, FORM, { option: "level" })}`);
  const linear = linearOf(decibels, type.reference);
  if (type.unit === typeOf(unit, "rms").unit && Math.abs(linear - value) <= 1e-9 * linear) return;
  throw new VeladisError("wrong-quantity", {
    expected: `a level that says the value beside it, ${value} ${unit}`,
    received: `${decibels} dB re ${re}, which is ${linear} ${type.unit}`,
  });
}

/**
 * Refuses a reading of another type or frequency than the last step left it in: by its unit alone it may be a thousand
 * times what it was. A value that was replaced is another matter: the history says so.
 */
function requireTypeOfHistory({ history, hertz }: Amplitude, type: string): void {
  const last = history?.at(-1);
  if (last === undefined) return;
  if (last.type !== type) {
    const { unit, detector } = parsedType(last.type);
    if (typeOf(unit, detector).type !== type) {
      throw new VeladisError("wrong-type", {
        expected: `a reading in ${unit} ${detector}, as the last step of its history says`,
        received: shown(type),
      });
    }
  }
  if (last.hertz === undefined || hertz === undefined || same(last.hertz, hertz)) return;
  throw new VeladisError("wrong-frequency", {
    expected: `a reading at ${last.hertz} Hz, as the last step of its history says`,
    received: shown(hertz),
  });
}

/** What an amplitude carries of its way, checked; what came from outside is copied and frozen, so that it stays. */
function checkedWay({ assumed, history, crestFactor, state }: Amplitude): Made {
  if (crestFactor !== undefined) requireCrestFactor(crestFactor);
  if (state !== undefined) requireChoice(state, loopStates, "the state of a loop", { option: "state" });
  for (const one of assumed === undefined ? [] : requireList(assumed, "what was assumed", { option: "assumed" })) {
    requireChoice(one, assumptionNames, "what was assumed");
  }
  if (history === undefined || isOwnHistory(history)) return {};
  const steps = checkedSteps(history);
  const told = steps.reduce<readonly Assumption[]>((all, step) => union(all, step.assumed), assumed ?? []);
  return { history: steps, ...((assumed !== undefined || told.length > 0) && { assumed: union([], told) }) };
}

/** What else says what a reading is written in: a limit of a scheme has it beside unit and detector. */
interface WrittenAs {
  readonly as?: string;
}

/**
 * A reading that says in `as` what its value is written in. Where that is a level, the value is in decibels, though unit
 * and detector stand beside it: without its level it would be read as so many nm/s.
 */
function writtenAs(reading: Amplitude, as: string): Amplitude {
  const { type, reference } = parsedType(requireText(as, FORM));
  const told = typeOf(reading.unit, reading.detector).type;
  if (reference === 0) {
    if (type === told) return reading;
    throw new VeladisError("wrong-type", {
      expected: `a reading in ${type}, as it says itself`,
      received: shown(told),
    });
  }
  if (reading.level !== undefined) return reading;
  const { value, hertz, ...rest } = reading;
  return { ...rest, ...amplitudeIn(as, linearOf(value, reference), hertz) };
}

/**
 * A reading that was taken apart, held against the catalogues: its unit and detector may be written in any of their
 * spellings, and a quantity that the object says must be the unit's own.
 *
 * @throws {@link VeladisError} `unknown-option` for a key such as `frequency`, `wrong-type`, `negative`, `not-positive`, `not-a-number`, `not-finite`,
 *   `wrong-quantity` for a level that contradicts the value and a quantity that is not the unit's, `wrong-type` for an `as` or a history that contradicts unit and
 *   detector, `wrong-frequency` for a history at another, and as {@link readingType}
 */
export function checkedAmplitude(reading: Amplitude): Amplitude {
  refuseOtherKeys(reading);
  const { as } = reading as WrittenAs;
  if (as !== undefined) return checkedParts(writtenAs(reading, as));
  return checkedParts(reading);
}

/** As {@link checkedAmplitude}, by unit and detector alone. */
function checkedParts(reading: Amplitude): Amplitude {
  const { value, hertz, level } = reading;
  const { unit, detector, quantity, reference, type } = typeOf(
    requireText(reading.unit, FORM, { option: "unit" }),
    requireText(reading.detector, FORM, { option: "detector" }),
  );
  if (reading.quantity !== undefined && reading.quantity !== quantity) {
    throw new VeladisError("wrong-quantity", {
      expected: `a reading of ${quantity}, as its unit ${unit} says`,
      received: shown(reading.quantity),
      option: "quantity",
    });
  }
  if (reference !== 0) throw new VeladisError("wrong-type", { expected: FORM, received: shown(reading.unit) });
  requireNonNegative(value, "an amplitude of zero or more", { option: "value" });
  if (hertz !== undefined) requirePositive(hertz, FREQUENCY_FORM, { option: "hertz" });
  if (level !== undefined) requireLevel(reading);
  const way = checkedWay(reading);
  requireTypeOfHistory(reading, type);
  const isSame = unit === reading.unit && detector === reading.detector && quantity === reading.quantity;
  return isSame && way.history === undefined ? reading : { ...reading, unit, detector, quantity, ...way };
}
