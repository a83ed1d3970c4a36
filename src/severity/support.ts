import { frozen, inPlace, raised, type Source, shown, VeladisError, withParameters } from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import type { KnownFacts } from "./machine";
import { labelsAgree } from "./verdict";

/** The rule for supports, read as a motor maker quotes it. */
export const supportRule = /* @__PURE__ */ frozen({
  text: "rigid in a direction where the lowest natural frequency of machine and support is at least 25 % above the main excitation frequency, else flexible",
  source: {
    title: "ISO 10816-3, support flexibility",
    where: "reproduced in a motor maker's manual, 3BFP 000 063 R0101 REV D, 7.4.3.2, page 54",
    provenance: "quoted",
    page: "https://manualshive.com/en/manual/abb/ama/ama_manual_3507-68.html",
    note: "read as quoted there, not in the standard",
  },
} as const satisfies { text: string; source: Source });

/** The rule for a support that nobody stated, read in a class society's guidance. */
export const unknownSupportRule = /* @__PURE__ */ frozen({
  text: "a support that cannot be classified is judged by the limits for a rigid one",
  source: {
    title: "Lloyd's Register, Ship Vibration and Noise Guidance Notes",
    where: "chapter 7, 2.5 and 2.6",
    provenance: "quoted",
    page: "https://imorules.com/GUID-9858436F-B387-491A-AAFA-AD09DEE7760E.html",
    note: "read on the page; here it holds for every fact not given that tells rows apart: the lowest limits are taken",
  },
} as const satisfies { text: string; source: Source });

/** A support is rigid when its lowest natural frequency is this many times the main excitation frequency or more. */
const RIGID_FROM = 1.25;

function ruled(natural: number, running: number): "rigid" | "flexible" {
  return raised(natural) >= RIGID_FROM * running ? "rigid" : "flexible";
}

/**
 * The support of a machine, by the 25 % rule of ISO 10816-3: rigid in a direction when the lowest natural frequency
 * of machine and support in that direction is at least 25 % above the main excitation frequency, usually the
 * rotation; otherwise flexible. It may differ by direction. (The clause was read as quoted in a motor maker's manual.)
 *
 * @param naturalFrequency - lowest natural frequency of machine and support, in the measured direction
 * @param excitation - main excitation frequency, usually the running speed
 * @throws {@link VeladisError} as {@link hertz}
 * @example
 * ```ts
 * import { supportOf } from "veladis/severity";
 *
 * supportOf("62.5 Hz", "3000 r/min"); // => "rigid"
 * supportOf("62 Hz", "3000 r/min"); // => "flexible"
 * ```
 */
export function supportOf(naturalFrequency: Frequency, excitation: Frequency): "rigid" | "flexible" {
  return withParameters({ naturalFrequency, excitation }, () => {
    const [natural, running] = Object.entries({ naturalFrequency, excitation }).map(([parameter, at]) =>
      inPlace({ parameter }, () => hertz(at)),
    ) as [number, number];
    return ruled(natural, running);
  });
}

/** Refuses a support and a mounting of which one is rigid and the other is not: each stands in for the other. */
function requireMounting(known: KnownFacts): KnownFacts {
  const { support, mounting } = known;
  if (typeof support !== "string" || typeof mounting !== "string") return known;
  const isKnown = ["rigid", "flexible"].some((one) => labelsAgree("mounting", one, mounting));
  if (!isKnown || labelsAgree("support", support, mounting)) return known;
  throw new VeladisError("out-of-range", {
    expected: `a mounting that agrees with the ${support} support`,
    received: `mounting ${shown(mounting)}`,
  });
}

/**
 * The facts with the support computed where the natural frequency and the speed are given; not where it is rigid in one
 * part of a range of speeds and flexible in the other.
 *
 * @throws {@link VeladisError} `out-of-range` when a support is stated that contradicts them, or a mounting the support
 */
export function withSupport(known: KnownFacts): KnownFacts {
  return requireMounting(withComputed(known));
}

function withComputed(known: KnownFacts): KnownFacts {
  const { naturalFrequency, speed, support } = known;
  if (typeof naturalFrequency !== "number" || speed === undefined) return known;
  const [low, high] = typeof speed === "object" ? speed : [speed as number, speed as number];
  const computed = ruled(naturalFrequency, high / 60);
  if (ruled(naturalFrequency, low / 60) !== computed) return known;
  if (support === undefined) return { ...known, support: computed };
  if (support === computed) return known;
  throw new VeladisError("out-of-range", {
    expected: `a ${computed} support, since the natural frequency is ${computed === "rigid" ? "" : "not "}25 % above the running frequency`,
    received: shown(support),
    option: "support",
  });
}
