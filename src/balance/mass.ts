import {
  type ErrorPlace,
  inPlace,
  numeralAndUnit,
  parseNumeral,
  type Ratio,
  requireNonNegative,
  requirePositive,
  requireText,
  shown,
  VeladisError,
} from "../core/index";

/** Masses: exact value in kg. Pound and ounce avoirdupois: NIST SP 811, Appendix B.8, exact, from memory. */
// biome-ignore format: a row of a table is a line
const masses = /* @__PURE__ */ Object.freeze({
  kg: { num: 1, den: 1 },
  g: { num: 1, den: 1000 },
  t: { num: 1000, den: 1 },
  lb: { num: 45359237, den: 1e8 },
  oz: { num: 45359237, den: 16e8 },
} as const satisfies Record<string, Ratio>);

/** Distances: exact value in m. */
// biome-ignore format: a row of a table is a line
const distances = /* @__PURE__ */ Object.freeze({
  m: { num: 1, den: 1 },
  cm: { num: 1, den: 100 },
  mm: { num: 1, den: 1000 },
  um: { num: 1, den: 1e6 },
  in: { num: 127, den: 5000 },
  mil: { num: 127, den: 5e6 },
} as const satisfies Record<string, Ratio>);

function unitIn<Table extends Record<string, Ratio>>(table: Table, symbol: string, what: string): Ratio {
  // the micro sign is normalised to the Greek letter
  const plain = symbol.normalize("NFKC").replace("μ", "u");
  if (Object.hasOwn(table, plain)) return table[plain] as Ratio;
  throw new VeladisError("unknown-unit", {
    expected: what,
    received: shown(symbol),
    allowed: Object.keys(table),
  });
}

function split(written: string, form: string): [number, string] {
  const [digits, unit] = numeralAndUnit(written, form);
  return [requirePositive(parseNumeral(digits), form), unit];
}

/** Kilograms of a mass such as `"120 kg"` or `"50 lb"`. */
export function kilograms(mass: string): number {
  return inPlace({ parameter: "mass" }, () => {
    const [value, unit] = split(mass, 'a mass above zero such as "120 kg"');
    const { num, den } = unitIn(masses, unit, "a unit of mass");
    return (value * num) / den;
  });
}

/** Kilograms of a mass that may be none, such as `"0 kg"` for a bare shaker. */
export function kilogramsOrNone(mass: string, form: string, place: ErrorPlace): number {
  return inPlace(place, () => {
    const [digits, unit] = numeralAndUnit(mass, form);
    const { num, den } = unitIn(masses, unit, "a unit of mass");
    return (requireNonNegative(parseNumeral(digits), form) * num) / den;
  });
}

/** Metres of a distance such as `"300 mm"` or `"12 in"`. */
export function metres(distance: string, place: ErrorPlace): number {
  return inPlace(place, () => {
    const [value, unit] = split(distance, 'a distance above zero such as "300 mm"');
    const { num, den } = unitIn(distances, unit, "a unit of length");
    return (value * num) / den;
  });
}

const UNIT = 'a unit of unbalance, mass times distance, such as "g·mm" or "oz·in"';

function unbalanceUnit(unit: string): Ratio {
  const parts = /^([a-z]+)[\s·.*⋅-]*([a-zµμ]+)$/i.exec(requireText(unit, UNIT, { parameter: "unit" }));
  if (parts === null) {
    throw new VeladisError("unknown-unit", {
      expected: UNIT,
      received: shown(unit),
      parameter: "unit",
    });
  }
  const [mass, distance] = parts.slice(1) as [string, string];
  const first = unitIn(masses, mass, "a unit of mass");
  const second = unitIn(distances, distance, "a unit of length");
  return { num: first.num * second.num, den: first.den * second.den };
}

/** What an unbalance looks like, for messages. */
export const UNBALANCE_FORM = 'an unbalance above zero such as "1200 g·mm"';

/** Unbalance in kg·m of `"1200 g·mm"`, `"0.8 oz·in"`, `"40 g-mm"`. */
export function kilogramMetres(unbalance: string): number {
  return inPlace({ parameter: "unbalance" }, () => {
    const [value, unit] = split(unbalance, UNBALANCE_FORM);
    const { num, den } = unbalanceUnit(unit);
    return (value * num) / den;
  });
}

/** An unbalance in kg·m, in another unit. */
export function unbalanceIn(kilogramMetresOf: number, unit: string): number {
  const { num, den } = unbalanceUnit(unit);
  return (kilogramMetresOf * den) / num;
}
