import * as protection from "veladis/protection";
import { kilogramsOrNone, unbalanceHistories } from "../../src/balance/index";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const p: Record<string, Loose> = protection;

const rotor = { mass: "120 kg", speed: "1500 r/min" };

const cases: Cases = {
  "balance grade, zero": () => p.permissibleEccentricity(0, "1500 r/min"),
  "balance grade, a text that is none": () => p.permissibleEccentricity("6.3", "1500 r/min"),
  "balance grade, a text of zero": () => p.permissibleEccentricity("G 0", "1500 r/min"),
  "balance grade, a decimal comma": () => p.permissibleEccentricity("G 6,3", "1500 r/min"),
  "permissibleUnbalance, no rotor": () => p.permissibleUnbalance("G 6.3"),
  "permissibleUnbalance, null for planes": () => p.permissibleUnbalance("G 6.3", { ...rotor, planes: null }),
  "journalUnbalance, no rotor": () => p.journalUnbalance(),
  "journalUnbalance, a mistyped fact": () => p.journalUnbalance({ ...rotor, plains: 2 }),
  "journalUnbalance, a mistyped plane": () => p.journalUnbalance({ ...rotor, planes: { lift: "3 in", right: "2 in" } }),
  "journalUnbalance, a plane without a unit": () =>
    p.journalUnbalance({ ...rotor, planes: { left: "3", right: "2 in" } }),
  "convertUnbalance, no unit": () => p.convertUnbalance("1200 g·mm"),
  "gradeOfUnbalance, no rotor": () => p.gradeOfUnbalance("1200 g·mm"),
  "mass, nothing": () => p.permissibleUnbalance("G 6.3", { speed: "1500 r/min" }),
  "mass, no text": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: {} }),
  "mass, no number": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: "kg" }),
  "mass, no unit": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: 120 }),
  "mass, a unit that is none": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: "120 stone" }),
  "mass, zero": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: "0 kg" }),
  "mass, a decimal comma": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: "1,5 kg" }),
  "histories of an unbalance, no unit": () => unbalanceHistories({ ...rotor, unbalance: "1200" } as Loose),
  "histories of an unbalance, a decimal comma": () => unbalanceHistories({ ...rotor, unbalance: "1,2 g mm" } as Loose),
  "load, no unit": () => kilogramsOrNone("2", "a load", { parameter: "load" }),
  "load, a unit that is none": () => kilogramsOrNone("2 stone", "a load", { parameter: "load" }),
  "load, below zero": () => kilogramsOrNone("-2 kg", "a load", { parameter: "load" }),
  "load, a decimal comma": () => kilogramsOrNone("1,5 kg", "a load", { parameter: "load" }),
  "distance, no unit": () => p.unbalanceOf("20 g", "300"),
  "distance, a unit that is none": () => p.unbalanceOf("20 g", "3 yd"),
  "unbalance, no unit": () => p.centrifugalForce("1200", "1500 r/min"),
  "unbalance, a unit that is none": () => p.centrifugalForce("1200 g/mm", "1500 r/min"),
  "unbalance, a unit of mass that is none": () => p.centrifugalForce("1200 gr mm", "1500 r/min"),
  "unbalance, a unit of length that is none": () => p.centrifugalForce("1200 g yd", "1500 r/min"),
  "unbalance, a number for a unit": () => p.unbalanceOf("4 oz", "2 in", 7),
  "unbalance, beyond what a number holds": () => p.unbalanceOf("1e300 kg", "1e300 m"),
};

holdWording("balance", cases);
