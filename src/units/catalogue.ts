import { frozen, type Ratio, type Source } from "../core/index";
import type { Quantity } from "./quantity";

/** One unit of vibration: what it measures and its exact ratio to the SI unit of that quantity. */
export interface Unit extends Ratio {
  readonly quantity: Quantity;
  /** Other symbols; they are part of the types. */
  readonly also?: readonly string[];
  /** Spoken names, read without regard to case; a length may be followed by /s, /s2 or "per second". */
  readonly spoken?: readonly string[];
}

/**
 * All units, by symbol. To add one, add its row here and below, and nowhere else.
 *
 * `num / den` is the exact value of the unit in m, m/s or m/s2. Raised and careted 2 and micro signs are read by
 * rule and need no spelling of their own.
 */
// biome-ignore format: a row of a table is a line
export const units = /* @__PURE__ */ frozen({
  "m/s2": { quantity: "acceleration", num: 1, den: 1 },
  "cm/s2": { quantity: "acceleration", num: 1, den: 100 },
  "mm/s2": { quantity: "acceleration", num: 1, den: 1000 },
  "um/s2": { quantity: "acceleration", num: 1, den: 1e6 },
  Gal: { quantity: "acceleration", num: 1, den: 100, spoken: ["galileo"] },
  g: { quantity: "acceleration", num: 196133, den: 20000, also: ["gn"], spoken: ["g's", "gs", "standard gravity"] },
  mg: { quantity: "acceleration", num: 196133, den: 2e7, spoken: ["milli-g"] },
  "in/s2": { quantity: "acceleration", num: 127, den: 5000 },
  "ft/s2": { quantity: "acceleration", num: 381, den: 1250 },

  "m/s": { quantity: "velocity", num: 1, den: 1 },
  "cm/s": { quantity: "velocity", num: 1, den: 100 },
  "mm/s": { quantity: "velocity", num: 1, den: 1000 },
  "um/s": { quantity: "velocity", num: 1, den: 1e6 },
  "nm/s": { quantity: "velocity", num: 1, den: 1e9 },
  "in/s": { quantity: "velocity", num: 127, den: 5000, also: ["ips"] },
  "uin/s": { quantity: "velocity", num: 127, den: 5e9 },
  "ft/s": { quantity: "velocity", num: 381, den: 1250, spoken: ["fps"] },

  m: { quantity: "displacement", num: 1, den: 1, spoken: ["metre"] },
  cm: { quantity: "displacement", num: 1, den: 100, spoken: ["centimetre"] },
  mm: { quantity: "displacement", num: 1, den: 1000, spoken: ["millimetre"] },
  um: { quantity: "displacement", num: 1, den: 1e6, also: ["micron"], spoken: ["microns", "micrometre"] },
  nm: { quantity: "displacement", num: 1, den: 1e9, spoken: ["nanometre"] },
  pm: { quantity: "displacement", num: 1, den: 1e12 },
  in: { quantity: "displacement", num: 127, den: 5000, spoken: ["inch", "inches"] },
  mil: { quantity: "displacement", num: 127, den: 5e6, also: ["thou"], spoken: ["mils", "thous"] },
  uin: { quantity: "displacement", num: 127, den: 5e9, spoken: ["microinch", "microinches", "micro-inch"] },
  ft: { quantity: "displacement", num: 381, den: 1250, spoken: ["foot", "feet"] },
} as const satisfies Record<string, Unit>);

/** The symbol of a unit: a key of {@link units}. */
export type UnitSymbol = keyof typeof units;

/** What is known of a unit besides its ratio; apart, so that a bundle that only converts leaves it out. */
export interface UnitFacts {
  readonly name: string;
  readonly source: Source;
}

const SI = {
  title: "BIPM, The International System of Units (SI), 9th edition, 2019",
  provenance: "memory",
  note: "decimal multiples of the coherent SI unit",
} as const satisfies Source;

const INCH = {
  title: "NIST SP 811 (2008), Appendix B.8",
  where: "inch, foot, mil, inch per second: exact",
  provenance: "quoted",
  page: "https://github.com/cran/NISTunits",
} as const satisfies Source;

const GRAVITY = {
  title: "NIST SP 811 (2008), Appendix B.8",
  where: "standard acceleration of free fall, 9.806 65 m/s2: exact (3rd CGPM, 1901)",
  provenance: "quoted",
  page: "https://github.com/cran/NISTunits",
  note: "9.8, 9.81, 386.1 and 386.4 are roundings met in print; none is used here",
} as const satisfies Source;

const GAL = {
  title: "NIST SP 811 (2008), Appendix B.8",
  where: "gal: exact",
  provenance: "quoted",
  page: "https://github.com/cran/NISTunits",
  note: "written Gal; gal in small letters is the gallon",
} as const satisfies Source;

const MIL = {
  title: "NIST SP 811 (2008), Appendix B.8",
  where: "mil: exact",
  provenance: "quoted",
  page: "https://github.com/cran/NISTunits",
  note: "a length; the angle of the same name (6400 to the turn) is another unit",
} as const satisfies Source;

/** Name and source of each unit, by symbol. */
// biome-ignore format: a row of a table is a line
export const unitFacts: Readonly<Record<UnitSymbol, UnitFacts>> = /* @__PURE__ */ frozen({
  "m/s2": { name: "metre per second squared", source: SI },
  "cm/s2": { name: "centimetre per second squared", source: SI },
  "mm/s2": { name: "millimetre per second squared", source: SI },
  "um/s2": { name: "micrometre per second squared", source: SI },
  Gal: { name: "gal (galileo)", source: GAL },
  g: { name: "standard gravity", source: GRAVITY },
  mg: { name: "thousandth of standard gravity", source: GRAVITY },
  "in/s2": { name: "inch per second squared", source: INCH },
  "ft/s2": { name: "foot per second squared", source: INCH },

  "m/s": { name: "metre per second", source: SI },
  "cm/s": { name: "centimetre per second", source: SI },
  "mm/s": { name: "millimetre per second", source: SI },
  "um/s": { name: "micrometre per second", source: SI },
  "nm/s": { name: "nanometre per second", source: SI },
  "in/s": { name: "inch per second", source: INCH },
  "uin/s": { name: "microinch per second", source: INCH },
  "ft/s": { name: "foot per second", source: INCH },

  m: { name: "metre", source: SI },
  cm: { name: "centimetre", source: SI },
  mm: { name: "millimetre", source: SI },
  um: { name: "micrometre", source: SI },
  nm: { name: "nanometre", source: SI },
  pm: { name: "picometre", source: SI },
  in: { name: "inch", source: INCH },
  mil: { name: "thousandth of an inch", source: MIL },
  uin: { name: "microinch", source: INCH },
  ft: { name: "foot", source: INCH },
});
