import { exactZone } from "veladis/own";
import { sealedScheme } from "veladis/severity";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;

const source = { title: "site rule 12", provenance: "memory" } as const;
const criterion = { as: "mm/s rms", limits: { "A/B": 1, "B/C": 2, "C/D": 4 }, source } as const;
const rule = { id: "site-rule-12", kind: "zones", standard: "site rule 12" } as const;
const classes = [
  { when: { power: { above: 15 } }, criteria: [{ ...criterion, when: { speed: { below: 600 } } }, criterion] },
];
const sealed = sealedScheme({ ...rule, classes } as Loose);
const ofPower = sealedScheme({ ...rule, classes: [{ when: { power: { above: 15 } }, criteria: [criterion] }] });
const ofShaft = sealedScheme({ ...rule, place: "shaft", classes: [{ criteria: [criterion] }] });
const exact = (machine: unknown, scheme: Loose = ofPower, as: Loose = "mm/s rms"): unknown =>
  exactZone(3, as, { scheme, machine } as Loose);

/** Refusals of {@link exactZone} and {@link sealedScheme}. */
export const exactRefusals: Cases = {
  "sealedScheme, no scheme": () => sealedScheme(7 as Loose),
  "sealedScheme, the id of a built-in one": () =>
    sealedScheme({ ...rule, id: "iso-10816-3-2009", classes: [{ criteria: [criterion] }] }),
  "sealedScheme, limits for orientation": () =>
    sealedScheme({ ...rule, informative: true, classes: [{ criteria: [criterion] }] }),
  "exactZone, no scheme": () => exactZone(3, "mm/s rms", {} as Loose),
  "exactZone, null for options": () => exactZone(3, "mm/s rms", null as Loose),
  "exactZone, an option that nobody has": () =>
    exactZone(3, "mm/s rms", { scheme: ofPower, assume: "nothing" } as Loose),
  "exactZone, below zero": () => exactZone(-3, "mm/s rms", { scheme: ofPower, machine: { power: 90 } }),
  "exactZone, a scheme that is no seal": () => exact({ power: 90 }, rule),
  "exactZone, a scheme that was changed": () => exact({ power: 90 }, ofPower.replace("15", "16")),
  "exactZone, a level": () => exact({ power: 90 }, ofPower, "dB re 1 nm/s"),
  "exactZone, a number for the type": () => exact({ power: 90 }, ofPower, 3),
  "exactZone, another detector": () => exact({ power: 90 }, ofPower, "mm/s pk"),
  "exactZone, without a fact": () => exact({}),
  "exactZone, without the speed": () => exact({ power: 90 }, sealed),
  "exactZone, of a shaft, without the place": () => exact({}, ofShaft),
  "exactZone, a machine outside": () => exact({ power: 10 }),
  "exactZone, a machine in words": () => exact("pump 90 kW"),
  "exactZone, what is no fact": () => exact({ power: 90, colour: "red" }),
  "exactZone, a power with its unit": () => exact({ power: "90 kW" }),
  "exactZone, a range that falls": () => exact({ power: [90, 20] }),
  "exactZone, a label that nobody has": () => exact({ power: 90, support: "rigd" }),
  "exactZone, a number for a label": () => exact({ power: 90, group: 2 }),
  "exactZone, a natural frequency": () => exact({ power: 90, naturalFrequency: 30 }),
};
