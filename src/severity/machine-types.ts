import { frozen } from "../core/index";

/** Kinds of machine, with other names people write. To add one, add its row here and nowhere else. */
// biome-ignore format: a row of a table is a line
export const machineTypes = /* @__PURE__ */ frozen({
  pump: { electrical: false, also: ["rotodynamic pump", "centrifugal pump", "boiler-feed pump", "feed pump", "circulation pump"] },
  fan: { electrical: false, also: ["blower", "induced-draught fan", "forced-draught fan"] },
  motor: { electrical: true, also: ["electric motor", "induction motor", "synchronous motor"] },
  generator: { electrical: true, also: ["alternator"] },
  compressor: { electrical: false, also: ["turbocompressor", "centrifugal compressor", "screw compressor"] },
  "gear drive": { electrical: false, also: ["gear unit", "gearbox", "gear", "gear reducer", "speed reducer"] },
  "steam turbine": { electrical: false, also: ["steam turbine set"] },
  "gas turbine": { electrical: false, also: ["gas turbine set"] },
  "hydro set": { electrical: false, also: ["hydraulic machine set", "hydro turbine", "water turbine", "Francis turbine", "Kaplan turbine", "Pelton turbine"] },
  "reciprocating engine": { electrical: false, also: ["diesel engine", "gas engine"] },
  "reciprocating compressor": { electrical: false, also: ["piston compressor", "recip compressor"] },
  "wind turbine": { electrical: false, also: [] },
  "cooling tower drive": { electrical: false, also: ["cooling-tower drive", "cooling tower fan", "cooling tower gearbox", "cooling tower motor"] },
} as const satisfies Record<string, { electrical: boolean; also: readonly string[] }>);

/** A kind of machine: a key of {@link machineTypes}. */
export type MachineType = keyof typeof machineTypes;
