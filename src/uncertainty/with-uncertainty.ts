import { convertAmplitude, linearTypeOf, multipliedAmplitude } from "../amplitude/index";
import { requireText, shown, VeladisError, withParameters } from "../core/index";
import { type Amplitude, madeOf, typeOf } from "../reading/index";
import { uncertaintyOn } from "./parse-uncertain";
import { statedAlone, uncertaintyNote } from "./stated";
import { uncertainAmplitude } from "./uncertain-amplitude";

const FORM = 'an uncertainty such as "± 5 % (k=2)"';

/**
 * A reading with one more thing that makes it uncertain, independent of the others: the sensitivity of the sensor, its
 * mounting, the frequency response, the resolution of the display.
 *
 * @param reading - words as for {@link parseUncertain}, or an amplitude
 * @param uncertainty - `"± 5 % (k=2)"`, `"± 0.5 dB"`, `"± 0.3 mm/s rms"`; without `(k=...)` a bound
 * @param name - what it comes from, for the list of its parts: `"sensitivity of the sensor"`
 * @returns the reading in its unit and detector (a level as its linear value), with a step `scale` by 1 that carries the uncertainty
 * @throws {@link VeladisError} `missing-unit` for a bare number beside a level, and as {@link parseUncertain}
 * @example
 * ```ts
 * import { sensor } from "veladis/sensor";
 * import { formatUncertain, uncertaintyOf, withUncertainty } from "veladis/uncertainty";
 *
 * const shown = sensor("100 mV/g").reading("98 mV pk", "g pk");
 * const reading = withUncertainty(shown, "± 5 % (k=2)", "sensitivity of the sensor");
 * formatUncertain(reading); // => "0.980 ± 0.049 g pk (k=2)"
 * uncertaintyOf(reading).parts.map(({ name }) => name); // => ["sensitivity of the sensor"]
 * ```
 */
export function withUncertainty(reading: string | Amplitude, uncertainty: string, name: string): Amplitude {
  return withParameters({ reading, uncertainty, name }, () => {
    const given = uncertainAmplitude(reading);
    const linear = given.level === undefined ? given : convertAmplitude(given, linearTypeOf(given));
    const stated = statedAlone(requireText(uncertainty, FORM, { parameter: "uncertainty" }));
    if (given.level !== undefined && stated.unit === "") {
      throw new VeladisError("missing-unit", {
        expected: `${FORM}, of a level in dB or %`,
        received: shown(uncertainty),
        parameter: "uncertainty",
      });
    }
    const from = requireText(name, "what an uncertainty comes from", { parameter: "name" });
    const own = uncertaintyOn(linear, stated);
    if (own === undefined) return multipliedAmplitude(linear, 1, `${from}: ± 0`);
    const { value, unit, detector, quantity, hertz } = linear;
    // of a factor of 1 the uncertainty is a share of the reading
    const share = Object.freeze({ ...own, ...(own.in !== "dB" && { standard: own.standard / value }), name: from });
    const note = `${from}: ${uncertaintyNote(own)}`;
    const step = { does: "scale", by: 1, value, type: typeOf(unit, detector).type, note, uncertainty: share } as const;
    return Object.freeze({ value, unit, detector, quantity, hertz, ...madeOf([linear], step) });
  });
}
