import type { MachineType } from "./machine-types";

/**
 * What people write on a machine, as far as it says a fact: fact, label, phrases that say just that, and phrases that
 * are taken for it, which the answer names. Hyphens and spaces, capital and small letters are one. The names of the
 * kinds stand in `machine-types.ts`. To add a phrase, add it to its row and nowhere else.
 */
// biome-ignore format: a row of a table is a line
export const factWords = [
  ["support", "rigid", ["rigid", "rigid support", "rigid supports", "rigidly supported", "rigid mounting", "rigid mounts", "rigidly mounted", "rigid foundation"], ["concrete block", "concrete foundation", "grouted"]],
  ["support", "flexible", ["flexible", "flexible support", "flexible supports", "flexibly supported", "flexible mounting", "flexible mounts", "flexibly mounted", "flexible foundation"], ["springs", "spring mounted", "spring mounts", "spring isolators", "isolators", "vibration isolators", "resilient mounts", "resilient mounting", "resiliently mounted", "rubber mounts", "anti vibration mounts"]],
  ["place", "shaft", ["shaft", "shaft probe", "shaft probes", "shaft vibration", "shaft reading", "shaft measurement", "shaft relative", "shaft absolute", "shaft relative vibration", "shaft absolute vibration", "relative shaft vibration", "absolute shaft vibration"], ["proximity probe", "proximity probes", "prox probe", "prox probes", "eddy current probe", "eddy current probes"]],
  ["place", "housing", ["housing", "bearing housing", "bearing housings", "housing vibration", "housing reading", "housing measurement"], ["casing", "pedestal", "bearing pedestal", "bearing cap"]],
  ["condition", "new", ["new", "brand new", "newly installed"], ["acceptance test", "commissioning", "new installation", "new machine", "new from works"]],
  ["condition", "in service", ["in service", "in operation"], ["existing"]],
  ["frame", "IEC", ["frame IEC", "IEC frame", "IEC motor"], []],
  ["frame", "NEMA", ["frame NEMA", "NEMA frame", "NEMA motor"], []],
  ["application", "residential", ["residential"], []],
  ["application", "HVAC", ["HVAC", "heating and ventilating"], ["air handling unit", "AHU", "air conditioning"]],
  ["application", "agricultural", ["agricultural"], ["agriculture"]],
  ["application", "industrial", ["industrial", "industrial process", "power generation"], []],
  ["application", "transport", ["transport", "transportation", "marine"], []],
  ["application", "tunnel", ["tunnel", "transit", "transit tunnel"], ["subway"]],
  ["application", "tunnel jet fan", ["tunnel jet fan", "jet fan"], []],
  ["application", "petrochemical", ["petrochemical", "petro chemical"], []],
  ["application", "chip making", ["chip making", "computer chip", "computer chips", "clean room", "clean rooms"], ["semiconductor"]],
  ["type", "fan", ["tunnel jet fan", "jet fan"], []],
  ["type", "motor", ["IEC motor", "NEMA motor"], ["pump motor", "fan motor", "compressor motor"]],
  ["type", "fan", [], ["ID blower", "FD blower", "axial blower"]],
  ["type", "generator", [], ["turbo generator"]],
  ["type", "compressor", [], ["chiller", "water chiller", "water cooled chiller", "air cooled chiller"]],
  ["type", "steam turbine", [], ["steam turbine generator", "steam turbine generating set"]],
  ["type", "gas turbine", [], ["gas turbine generator", "gas turbine generating set"]],
  ["type", "hydro set", [], ["hydro generator", "hydro generating set", "hydraulic generating set", "water turbine generating set", "Francis", "Kaplan", "Pelton"]],
  ["type", "screw compressor", [], ["screw chiller", "screw type compressor"]],
  ["type", "reciprocating generating set", [], ["genset", "gen set", "diesel generator", "diesel engine generator", "gas engine generator", "engine generating set", "engine driven generating set", "diesel generator set"]],
] as const;

/** Words that say a size without a number: no fact, so the answer names them. */
// biome-ignore format: a row of a table is a line
export const sizes = ["tiny", "mini", "micro", "little", "small", "small sized", "medium", "medium sized", "big", "large", "large sized", "huge"] as const;

/** Words that may stand before a kind of machine and leave it what it is; the last rows are for any kind. */
// biome-ignore format: a row of a table is a line
export const qualifiers = [
  ["fan", ["ID", "FD", "induced draught", "induced draft", "forced draught", "forced draft", "axial", "radial", "centrifugal", "fin", "exhaust", "supply", "extract", "cooling", "primary air", "secondary air"]],
  ["pump", ["rotodynamic", "centrifugal", "axial", "submersible", "slurry", "boiler feed", "boiler feed water", "feed water", "feed", "circulation", "circulating", "cooling water", "condensate", "booster", "in line", "end suction", "multistage", "split case", "process", "fire", "water"]],
  ["compressor", ["rotary", "turbo", "centrifugal", "axial", "air", "gas", "process"]],
  ["motor", ["electric", "electrical", "induction", "asynchronous", "synchronous", "squirrel cage", "three phase", "AC", "DC"]],
  ["generator", ["electric", "synchronous", "induction"]],
  ["screw compressor", ["rotary", "air", "gas", "process", "oil flooded", "oil injected", "oil free", "dry"]],
  ["lobe blower", ["rotary", "air", "process", "oil free"]],
  ["reciprocating engine", ["diesel", "gas"]],
  ["reciprocating generating set", ["diesel", "gas"]],
  ["pump", ["hot water", "cold water", "raw water", "treated water", "drinking water", "waste water", "heating water", "make up water", "oil", "lube oil", "fuel oil", "lube", "fuel", "brine", "acid", "product", "glycol"]],
  ["fan", ["air", "flue gas", "make up air", "combustion air", "process air", "recirculation", "ventilation"]],
  ["screw compressor", ["process air", "instrument air", "plant air", "refrigerant"]],
  ["compressor", ["process air", "instrument air", "plant air", "refrigerant"]],
  ["gear drive", ["parallel shaft", "right angle"]],
  ["", ["horizontal", "vertical", "main", "standby", "stand by", "spare", "duty", "primary", "secondary", "tertiary", "auxiliary", "emergency"]],
  ["", ["hot", "cold", "raw", "treated", "drinking", "waste", "cooling", "heating", "network", "district", "district heating", "process", "service", "plant", "works", "transfer", "return", "supply", "make up"]],
  ["", ["north", "south", "east", "west", "left", "right", "upper", "lower", "front", "rear", "middle", "inner", "outer", "high pressure", "low pressure", "HP", "LP", "drive end", "driven end", "DE", "NDE"]],
  ["", sizes],
  ["", ["old", "used", "overhauled", "repaired", "rewound", "first", "second", "third", "B", "C", "D", "E", "F"]],
] as const;

/** What the number behind some words is. */
export type Context = "" | "natural" | "line" | "height" | "shaft";

/** Words that say nothing by themselves: what follows says it, and in some rows what kind of number it is. */
// biome-ignore format: a row of a table is a line
export const fillers = [
  ["", ["rated", "rated power", "power", "shaft power", "running speed", "shaft speed", "rated speed", "speed", "frame", "frame size", "type", "support", "place", "condition", "application", "mounted", "installed", "at", "and", "on", "with", "of", "a", "an", "the"]],
  ["natural", ["natural", "natural frequency", "lowest natural frequency"]],
  ["line", ["line", "line frequency", "mains", "mains frequency", "supply", "supply frequency"]],
  ["height", ["height", "measuring height"]],
  ["shaft", ["shaft height", "H"]],
] as const satisfies readonly (readonly [Context, readonly string[]])[];

/** Words that hold the name of a fact and say none. */
// biome-ignore format: a row of a table is a line
export const noFacts = ["hollow shaft", "solid shaft", "shaft seal", "shaft end", "shaft coupling", "shaft mounted", "split casing", "double casing", "barrel casing", "new bearings", "test bed", "test bench", "test run", "flexible coupling", "rigid coupling", "gear coupling", "flexible rotor", "rigid rotor", "fluid coupling", "hydraulic coupling", "engine room", "engine hall", "engine house", "turbine room", "turbine hall", "turbine house", "turbine building", "compressor room", "compressor hall", "compressor house", "pump room", "pump hall", "pump house", "non drive end", "non driven end"];

/** Things that a word such as new or flexible right before them is about, and not the machine. */
// biome-ignore format: a row of a table is a line
export const things = ["bearing", "seal", "impeller", "pipe", "hose", "cable", "belt", "sleeve", "diameter", "length", "material", "alignment", "gasket", "filter", "winding", "bellows", "duct", "joint", "piping"] as const;

/** Names that several kinds of machine have, each with what it may be. */
// biome-ignore format: a row of a table is a line
export const vagueNames = [
  [["generating set"], ["steam turbine generating set", "hydro generating set", "diesel generating set"]],
  [["turbine generator", "turbine generating set"], ["steam turbine generator", "gas turbine generator", "hydro generator"]],
  [["blower"], ["fan", "lobe blower"]],
  [["vacuum pump"], ["lobe blower", "screw compressor"]],
  [["CHP", "CHP unit", "CHP plant", "CHP set", "cogeneration unit", "cogeneration plant", "cogeneration set"], ["gas engine generating set", "gas turbine generating set", "steam turbine generating set"]],
] as const;

/** What a generator or a generating set is, by the kind that drives it. */
export const drivenSets = {
  "reciprocating engine": "reciprocating generating set",
  "steam turbine": "steam turbine",
  "gas turbine": "gas turbine",
  "aero-derivative gas turbine": "aero-derivative gas turbine",
  "hydro set": "hydro set",
  "wind turbine": "wind turbine",
} as const satisfies { readonly [T in MachineType]?: MachineType };

/** Kinds that something drives in no case, and what may drive a machine. */
export const neverDriven: readonly MachineType[] = [
  "motor",
  "steam turbine",
  "gas turbine",
  "aero-derivative gas turbine",
  "hydro set",
  "reciprocating engine",
  "reciprocating generating set",
  "wind turbine",
];
export const drivers: readonly MachineType[] = [
  "motor",
  "steam turbine",
  "gas turbine",
  "aero-derivative gas turbine",
  "hydro set",
  "reciprocating engine",
  "gear drive",
];

/**
 * Words that make another kind of a machine: beside a kind, in whatever order, they are never set aside. Each row names
 * the kinds that they may mean; some words do so beside few kinds alone.
 */
// biome-ignore format: a row of a table is a line
export const kindMarks: readonly (readonly [words: readonly string[], kinds: readonly MachineType[], beside?: readonly MachineType[]])[] = [
  [["diesel", "diesels"], ["reciprocating engine", "reciprocating generating set"]],
  [["engine", "engines"], ["reciprocating engine", "reciprocating generating set", "gas turbine"]],
  [["recip", "recips", "reciprocating", "piston", "pistons", "cylinder", "cylinders", "cyl", "crosshead", "crankshaft", "stroke"], ["reciprocating compressor", "reciprocating engine", "reciprocating generating set"]],
  [["turbine", "turbines"], ["steam turbine", "gas turbine", "hydro set", "wind turbine"]],
  [["aero", "aeroderivative", "aircraft", "derivative"], ["aero-derivative gas turbine"]],
  [["hydro", "hydraulic", "hydroelectric"], ["hydro set"]],
  [["wind"], ["wind turbine"]],
  [["screw", "screws"], ["screw compressor"]],
  [["lobe", "lobes", "roots"], ["lobe blower"]],
  [["vacuum"], ["lobe blower", "screw compressor"]],
  [["geared", "gears"], ["gear drive"]],
  [["CHP", "cogeneration"], ["reciprocating generating set", "gas turbine", "steam turbine"]],
  [["plunger", "plungers", "diaphragm", "peristaltic", "vane", "vanes", "positive", "progressive", "progressing", "driven", "driver"], []],
  [["gas"], ["reciprocating generating set", "gas turbine"], ["generator", "motor"]],
  [["steam"], ["steam turbine"], ["generator", "motor"]],
  [["tower"], ["cooling tower drive"], ["fan", "motor", "gear drive"]],
];

/** How a compressor is built that is no screw, lobe or piston machine. */
export const builds: readonly string[] = ["centrifugal", "axial", "turbo", "turbocompressor", "radial"];

/** Facts whose label follows their name: `group 2`, `class III`. */
export const labelled = [
  "group",
  "class",
  "category",
  "grade",
  "mounting",
  "region",
  "test",
  "part",
  "band",
  "content",
  "units",
] as const;

/** The name of a fact whose label follows it. */
export type LabelName = (typeof labelled)[number];

/** The labels of the schemes that are words, as patterns without regard to case: a second one behind a label contradicts it. */
// biome-ignore format: a row of a table is a line
export const wordLabels: Readonly<Record<LabelName, readonly string[]>> = {
  group: [],
  class: ["vertically suspended", "overhung", "between bearings", "dry", "oil-flooded", "(?:low|high)[\\s-](?:end|speed)"],
  category: [],
  grade: ["normal", "reduced", "special", "[ab]"],
  mounting: ["free", "rigid", "resilient"],
  region: ["preferred", "allowable"],
  test: ["site", "works"],
  part: ["nacelle", "rotor bearing", "gearbox", "generator", "location 1", "other main bearings", "foundation", "frame(?![\\s:=]+(?:size|iec|nema|\\S*\\d))", "cylinder(?:[\\s(]+(?:rod|lateral))?", "dampers", "piping", "engine", "skid"],
  band: ["low", "high", "a"],
  content: ["overall", "subsynchronous", "discrete", "nonsynchronous"],
  units: ["metric", "customary"],
};

/** Names of labels cut short, before a numeral: `cat. II`. */
export const abbreviations = { cat: "category", gr: "group", cl: "class" } as const;

/** The name of a fact whose label follows, whole or cut short, at the beginning of a text. */
export const LABEL_NAME = /* @__PURE__ */ (() =>
  new RegExp(`^(?:${[...labelled, ...Object.keys(abbreviations)].join("|")})(?![a-z])`, "i"))();
