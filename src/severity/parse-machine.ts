import { cached, nearest, requireText, shown, splitNumeral, VeladisError } from "../core/index";
import { type FrequencyText, frequency } from "../frequency/index";
import type { Fact } from "./facts";
import { folded } from "./label";
import { findMachineType, type Machine } from "./machine";
import { machineTypes } from "./machine-types";
import { kilowattsPer, millimetresPer } from "./size";

const FORM = 'a machine such as "pump 90 kW 2980 r/min rigid"';
const LONGEST = 300;

/** Words that say a fact by themselves. */
const words = {
  rigid: { support: "rigid" },
  "rigid support": { support: "rigid" },
  flexible: { support: "flexible" },
  "flexible support": { support: "flexible" },
  housing: { place: "housing" },
  shaft: { place: "shaft" },
  new: { condition: "new" },
  "in service": { condition: "in service" },
} as const satisfies Record<string, Machine>;

/** Facts whose label follows their name: `group 2`, `class III`. */
const named = [
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
] as const satisfies readonly Fact[];

function has(per: object, unit: string): boolean {
  return Object.keys(per).some((name) => name.toLowerCase() === unit.toLowerCase());
}

/** The fact that a number with its unit says. */
function sized(digits: string, unit: string, natural: boolean): Machine {
  const said = `${digits} ${unit}`;
  if (has(kilowattsPer, unit)) return { power: said as `${number} kW` };
  if (has(millimetresPer, unit)) return { shaftHeight: said as `${number} mm` };
  const { hertz } = frequency(said as FrequencyText);
  return natural ? { naturalFrequency: { hertz } } : { speed: { hertz } };
}

const read = /* @__PURE__ */ cached((line): Machine => {
  const written = line.trim();
  if (written.length > LONGEST) throw new VeladisError("syntax", { expected: FORM, received: shown(line) });
  let rest = written;
  let machine: Machine = {};
  let natural = false;
  const add = (said: Machine, length: number): void => {
    for (const fact of Object.keys(said) as Fact[]) {
      if (machine[fact] === undefined || machine[fact] === said[fact]) continue;
      throw new VeladisError("syntax", {
        expected: `one ${fact} in the description of a machine`,
        received: shown(line),
      });
    }
    machine = { ...machine, ...said };
    natural = /^natural/i.test(rest);
    rest = rest.slice(length).replace(/^[\s,;]+/, "");
  };
  while (rest !== "") {
    const said = phrase(rest, natural);
    if (said === undefined) refuse(rest);
    else add(...said);
  }
  return Object.freeze(machine);
});

/**
 * The machine that a line of words says: a kind of machine, a power, a speed, a shaft height in mm, `rigid` or
 * `flexible`, `natural 65 Hz`, `shaft` or `housing`, `new`, and labels such as `group 2`, `class III`, `BV-3`.
 * Labels of more than one word stand in quotation marks: `part "cylinder (rod)"`.
 *
 * @throws {@link VeladisError} `syntax`, `unknown-option` for a word that says nothing of a machine, `not-positive`
 * @example
 * ```ts
 * import { parseMachine } from "veladis/severity";
 *
 * parseMachine("pump 90 kW rigid");
 * // => { type: "pump", power: "90 kW", support: "rigid" }
 * parseMachine("induced-draught fan 250 kW flexible BV-3");
 * // => { type: "fan", power: "250 kW", support: "flexible", category: "BV-3" }
 * ```
 */
export function parseMachine(line: string): Machine {
  return read(requireText(line, FORM));
}

/** What the next words say, and how many characters they take. */
function phrase(rest: string, natural: boolean): [Machine, length: number] | undefined {
  const [digits, behind] = splitNumeral(rest);
  if (digits !== "") {
    const unit = /^[^\s,;]+/.exec(behind)?.[0];
    if (unit === undefined)
      throw new VeladisError("missing-unit", {
        expected: `a unit after the number, as in "90 kW"`,
        received: shown(rest),
      });
    return [sized(digits, unit, natural), rest.length - behind.length + unit.length];
  }
  const label = new RegExp(`^(${named.join("|")})[\\s:=]+(?:"([^"]+)"|([^\\s,;]+))`, "i").exec(rest);
  if (label !== null) {
    const [whole, fact, quoted, bare] = label;
    return [{ [(fact as string).toLowerCase()]: quoted ?? bare } as Machine, whole.length];
  }
  const category = /^bv[\s-]?(\d)\b/i.exec(rest);
  if (category !== null) return [{ category: `BV-${category[1]}` }, category[0].length];
  const filler =
    /^(?:natural(?: frequency)?(?: of)?|shaft height|rated|at|and|on|with|a|an|the|H)(?=[\s=:]|$)[\s=:]*/i.exec(rest);
  if (filler !== null) return [{}, filler[0].length];
  const pieces = rest.split(/([\s,;]+)/);
  for (const count of [5, 3, 1]) {
    const said = pieces.slice(0, count).join("");
    const type = findMachineType(said);
    if (type !== undefined) return [{ type }, said.length];
    const known = Object.entries(words).find(([word]) => folded(word) === folded(said));
    if (known !== undefined) return [known[1], said.length];
  }
  return undefined;
}

function refuse(rest: string): never {
  const word = /[^\s,;]+/.exec(rest)?.[0] ?? rest;
  throw new VeladisError("unknown-option", {
    expected: `${FORM}, each word a fact of the machine`,
    received: shown(word),
    didYouMean: nearest(word, [...Object.keys(machineTypes), ...Object.keys(words), ...named]),
    allowed: [...Object.keys(machineTypes), "rigid", "flexible", "housing", "shaft", "new", "in service", ...named],
  });
}
