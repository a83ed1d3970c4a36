import { defineScheme, type Scheme, type SchemeInput } from "veladis/severity";

/** A scheme of one's own with the text wherever a scheme may have one. */
export function hostileInput(text: string, kind: "zones" | "grades" = "grades"): SchemeInput {
  const [calm, lively] = [`${text} calm`, `${text} lively`];
  const source = { title: text, where: text, provenance: "memory", page: text, note: text } as const;
  const limits = kind === "grades" ? { [calm]: 2, [lively]: 4 } : { "A/B": 2, "B/C": 4, "C/D": 8 };
  return {
    id: `id ${text}`,
    kind,
    standard: text,
    edition: text,
    title: text,
    status: "guide",
    statusNote: text,
    scope: text,
    place: "housing",
    measuredOn: text,
    band: null,
    notes: [text],
    ...(kind === "grades" && { grades: [calm, lively, `${text} rough`] }),
    classes: [{ note: text, criteria: [{ as: "mm/s rms", limits, source }] }],
  } as unknown as SchemeInput;
}

export function hostileScheme(text: string, kind: "zones" | "grades" = "grades"): Scheme {
  return defineScheme(hostileInput(text, kind)) as Scheme;
}
