import { frozen, type Ratio, type Source } from "../core/index";
import type { Quantity } from "./quantity";

/** One unit of vibration: what it measures and its exact ratio to the SI unit of that quantity. */
export interface Unit extends Ratio {
  readonly quantity: Quantity;
  readonly name: string;
  /** Other ways of writing the symbol, exact to the letter; they are part of the types. */
  readonly written: readonly string[];
  /** Spoken names, read without regard to case; they are not part of the types. */
  readonly spoken: readonly string[];
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
  provenance: "published",
  page: "https://github.com/cran/NISTunits",
} as const satisfies Source;

const GRAVITY = {
  title: "NIST SP 811 (2008), Appendix B.8",
  where: "standard acceleration of free fall, 9.806 65 m/s2: exact (3rd CGPM, 1901)",
  provenance: "published",
  page: "https://github.com/cran/NISTunits",
  note: "9.8, 9.81, 386.1 and 386.4 are roundings met in print; none is used here",
} as const satisfies Source;

/**
 * All units, by symbol. To add one, add its row here and nowhere else.
 *
 * `num / den` is the exact value of the unit in m, m/s or m/s2.
 */
// biome-ignore format: a row of a table is a line
export const units = /* @__PURE__ */ frozen({
  "m/s2": { quantity: "acceleration", num: 1, den: 1, name: "metre per second squared", written: ["m/s²", "m/s^2"], spoken: ["metre per second squared", "metres per second squared", "meters per second squared"], source: SI },
  "cm/s2": { quantity: "acceleration", num: 1, den: 100, name: "centimetre per second squared", written: ["cm/s²", "cm/s^2"], spoken: [], source: SI },
  "mm/s2": { quantity: "acceleration", num: 1, den: 1000, name: "millimetre per second squared", written: ["mm/s²", "mm/s^2"], spoken: [], source: SI },
  "um/s2": { quantity: "acceleration", num: 1, den: 1e6, name: "micrometre per second squared", written: ["µm/s2", "μm/s2", "µm/s²", "μm/s²", "um/s²", "um/s^2"], spoken: [], source: SI },
  Gal: { quantity: "acceleration", num: 1, den: 100, name: "gal (galileo)", written: [], spoken: ["galileo"], source: { ...INCH, where: "gal, 0.01 m/s2: exact", note: "written Gal; gal in small letters is the gallon" } },
  g: { quantity: "acceleration", num: 196133, den: 20000, name: "standard gravity", written: [], spoken: ["gn", "g's", "gs", "gee", "gees", "standard gravity"], source: GRAVITY },
  mg: { quantity: "acceleration", num: 196133, den: 2e7, name: "thousandth of standard gravity", written: [], spoken: ["milli-g", "milli g", "millig"], source: GRAVITY },
  "in/s2": { quantity: "acceleration", num: 127, den: 5000, name: "inch per second squared", written: ["in/s²", "in/s^2"], spoken: ["inch per second squared", "inches per second squared"], source: INCH },
  "ft/s2": { quantity: "acceleration", num: 381, den: 1250, name: "foot per second squared", written: ["ft/s²", "ft/s^2"], spoken: ["foot per second squared", "feet per second squared"], source: INCH },
  "m/s": { quantity: "velocity", num: 1, den: 1, name: "metre per second", written: [], spoken: ["metre per second", "metres per second", "meters per second"], source: SI },
  "cm/s": { quantity: "velocity", num: 1, den: 100, name: "centimetre per second", written: [], spoken: [], source: SI },
  "mm/s": { quantity: "velocity", num: 1, den: 1000, name: "millimetre per second", written: [], spoken: ["millimetre per second", "millimetres per second", "millimeters per second"], source: SI },
  "um/s": { quantity: "velocity", num: 1, den: 1e6, name: "micrometre per second", written: ["µm/s", "μm/s"], spoken: ["micron/s", "microns per second"], source: SI },
  "nm/s": { quantity: "velocity", num: 1, den: 1e9, name: "nanometre per second", written: [], spoken: [], source: SI },
  "in/s": { quantity: "velocity", num: 127, den: 5000, name: "inch per second", written: ["ips"], spoken: ["inch/s", "inches/s", "inch per second", "inches per second"], source: INCH },
  "uin/s": { quantity: "velocity", num: 127, den: 5e9, name: "microinch per second", written: ["µin/s", "μin/s"], spoken: ["microinch/s", "micro-inch/s", "microinch per second"], source: INCH },
  "ft/s": { quantity: "velocity", num: 381, den: 1250, name: "foot per second", written: [], spoken: ["fps", "foot per second", "feet per second"], source: INCH },
  m: { quantity: "displacement", num: 1, den: 1, name: "metre", written: [], spoken: ["metre", "metres", "meter", "meters"], source: SI },
  cm: { quantity: "displacement", num: 1, den: 100, name: "centimetre", written: [], spoken: ["centimetre", "centimetres", "centimeters"], source: SI },
  mm: { quantity: "displacement", num: 1, den: 1000, name: "millimetre", written: [], spoken: ["millimetre", "millimetres", "millimeter", "millimeters"], source: SI },
  um: { quantity: "displacement", num: 1, den: 1e6, name: "micrometre", written: ["µm", "μm", "micron"], spoken: ["microns", "micrometre", "micrometres", "micrometer", "micrometers"], source: SI },
  nm: { quantity: "displacement", num: 1, den: 1e9, name: "nanometre", written: [], spoken: ["nanometre", "nanometres", "nanometers"], source: SI },
  pm: { quantity: "displacement", num: 1, den: 1e12, name: "picometre", written: [], spoken: ["picometre", "picometres", "picometers"], source: SI },
  in: { quantity: "displacement", num: 127, den: 5000, name: "inch", written: [], spoken: ["inch", "inches"], source: INCH },
  mil: { quantity: "displacement", num: 127, den: 5e6, name: "thousandth of an inch", written: ["thou"], spoken: ["mils", "thous"], source: { ...INCH, note: "a length; the angle of the same name (6400 to the turn) is another unit" } },
  uin: { quantity: "displacement", num: 127, den: 5e9, name: "microinch", written: ["µin", "μin"], spoken: ["microinch", "microinches", "micro-inch"], source: INCH },
  ft: { quantity: "displacement", num: 381, den: 1250, name: "foot", written: [], spoken: ["foot", "feet"], source: INCH },
} as const satisfies Record<string, Unit>);

/** The symbol of a unit: a key of {@link units}. */
export type UnitSymbol = keyof typeof units;

/** Quantity of every spelling the types know, symbols and other ways of writing them. */
export type UnitQuantities = {
  [S in UnitSymbol as S | (typeof units)[S]["written"][number]]: (typeof units)[S]["quantity"];
};

/** A spelling of a unit that the types know. */
export type UnitSpelling = keyof UnitQuantities;
