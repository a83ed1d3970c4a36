import { frozen, type Source } from "../core/index";
import type { UnitSymbol } from "../units/index";

/** A reference of decibel levels: the RMS value that is 0 dB. */
export interface LevelReference {
  readonly value: number;
  readonly unit: UnitSymbol;
}

/** Published references of decibel levels, by name. To add one, add its row here and below, and nowhere else. */
// biome-ignore format: a row of a table is a line
export const levelReferences = /* @__PURE__ */ frozen({
  "ISO 1683 acceleration": { value: 1, unit: "um/s2" },
  "ISO 1683 velocity": { value: 1, unit: "nm/s" },
  "ISO 1683 displacement": { value: 1, unit: "pm" },
  "ANSI S1.8-1969 acceleration": { value: 10, unit: "um/s2" },
  "ANSI S1.8-1969 velocity": { value: 10, unit: "nm/s" },
  "MIL-STD-1621 acceleration": { value: 10, unit: "um/s2" },
  "MIL-STD-1621 velocity": { value: 10, unit: "nm/s" },
  "MIL-STD-1621 displacement": { value: 10, unit: "pm" },
  "ISO/TS 7849 velocity": { value: 50, unit: "nm/s" },
  "FTA velocity": { value: 1, unit: "uin/s" },
} as const satisfies Record<string, LevelReference>);

/** The name of a published reference: a key of {@link levelReferences}. */
export type LevelReferenceName = keyof typeof levelReferences;

const ISO_1683 = {
  title: "ISO 1683 reference values for levels of vibration",
  where: "quoted in ASA Standard Terms 3.23 and 3.24 and in an acoustic glossary",
  provenance: "quoted",
} as const satisfies Source;

const ANSI_1969 = {
  title: "ANSI S1.8-1969 preferred reference quantities",
  where: "quoted in ASA Standard Terms 3.23 and 3.24",
  provenance: "quoted",
  note: "older: levels are 20 dB lower than by ISO 1683",
} as const satisfies Source;

const NAVY = {
  title: "MIL-STD-1621A(NAVY), 1973",
  provenance: "memory",
  note: "front matter read, the clause with the numbers not",
} as const satisfies Source;

/** Source of each reference, by name; apart, so that a bundle that only converts leaves it out. */
export const levelReferenceSources: Readonly<Record<LevelReferenceName, Source>> = /* @__PURE__ */ frozen({
  "ISO 1683 acceleration": ISO_1683,
  "ISO 1683 velocity": ISO_1683,
  "ISO 1683 displacement": {
    title: "ISO 1683:2015, Table 2",
    provenance: "memory",
    note: "scope read, table not",
  },
  "ANSI S1.8-1969 acceleration": ANSI_1969,
  "ANSI S1.8-1969 velocity": ANSI_1969,
  "MIL-STD-1621 acceleration": NAVY,
  "MIL-STD-1621 velocity": NAVY,
  "MIL-STD-1621 displacement": NAVY,
  "ISO/TS 7849 velocity": {
    title: "ISO/TS 7849-1 and -2",
    provenance: "memory",
    note: "surface velocity of radiating structures",
  },
  "FTA velocity": {
    title: "FTA Transit Noise and Vibration Impact Assessment Manual, 2018",
    where: "Table 7-4 and equation 7-2, quoted in a consultant's worksheet",
    provenance: "quoted",
    page: "https://lfweb.sjgov.org/EHD/0/doc/931839/Page166.aspx",
    note: "written VdB in that manual",
  },
});
