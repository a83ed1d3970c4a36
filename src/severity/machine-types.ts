import { frozen } from "../core/index";

/** A kind of machine; `of` is the wider kind that it belongs to, whose schemes are for it too. */
interface MachineTypeEntry {
  readonly electrical: boolean;
  readonly of?: string;
  readonly also: readonly string[];
}

/** Kinds of machine, with other names people write. To add one, add its row here and nowhere else. */
// biome-ignore format: a row of a table is a line
export const machineTypes = /* @__PURE__ */ frozen({
  pump: { electrical: false, also: ["rotodynamic pump", "centrifugal pump", "boiler-feed pump", "feed pump", "circulation pump"] },
  fan: { electrical: false, also: ["induced-draught fan", "forced-draught fan"] },
  motor: { electrical: true, also: ["electric motor", "induction motor", "synchronous motor"] },
  generator: { electrical: true, also: ["alternator"] },
  compressor: { electrical: false, also: ["turbocompressor", "centrifugal compressor"] },
  "screw compressor": { electrical: false, of: "compressor", also: ["twin screw compressor", "single screw compressor", "rotary screw compressor", "screw air compressor", "screw gas compressor", "rotary screw air compressor"] },
  "lobe blower": { electrical: false, of: "compressor", also: ["rotary lobe blower", "Roots blower", "rotary piston blower", "positive displacement blower"] },
  "centrifugal chiller": { electrical: false, of: "compressor", also: ["centrifugal water chiller", "centrifugal refrigeration compressor"] },
  "gear drive": { electrical: false, also: ["gear unit", "gearbox", "gear", "gear reducer", "speed reducer"] },
  "steam turbine": { electrical: false, also: ["steam turbine set"] },
  "gas turbine": { electrical: false, also: ["gas turbine set"] },
  "aero-derivative gas turbine": { electrical: false, also: ["aircraft-derivative gas turbine"] },
  "hydro set": { electrical: false, also: ["hydraulic machine set", "hydro turbine", "water turbine", "Francis turbine", "Kaplan turbine", "Pelton turbine"] },
  "reciprocating engine": { electrical: false, also: ["diesel engine", "gas engine"] },
  "reciprocating generating set": { electrical: false, of: "reciprocating engine", also: ["reciprocating engine generating set", "diesel generating set", "diesel engine generating set", "gas engine generating set", "diesel driven generating set", "diesel engine driven generating set", "gas engine driven generating set"] },
  "reciprocating compressor": { electrical: false, also: ["piston compressor", "recip compressor"] },
  "wind turbine": { electrical: false, also: [] },
  "cooling tower drive": { electrical: false, also: ["cooling-tower drive", "cooling tower fan", "cooling tower gearbox", "cooling tower motor"] },
} as const satisfies Record<string, MachineTypeEntry>);

/** A kind of machine: a key of {@link machineTypes}. */
export type MachineType = keyof typeof machineTypes;

/** A kind of machine, and the wider kind that it belongs to, if it does. */
export function kindsOf(type: string): readonly string[] {
  const { of } = (machineTypes as Readonly<Record<string, MachineTypeEntry>>)[type] ?? {};
  return of === undefined ? [type] : [type, of];
}
