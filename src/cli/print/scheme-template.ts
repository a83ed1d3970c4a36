import type { SchemeInput } from "../../severity/index";

/** A scheme of one's own, to be filled in. */
const template: SchemeInput = {
  id: "own-rule-1",
  kind: "zones",
  standard: "Hollowmere site rule 1, invented",
  edition: "first issue",
  title: "Fans of the boiler house",
  scope: "the induced-draught fans of the boiler house, measured on the bearing housings",
  machines: ["fan"],
  measuredOn: "bearing housings",
  band: [10, 1000],
  classes: [
    {
      when: { power: { above: 15, to: 300 }, support: "rigid" },
      criteria: [
        {
          as: "mm/s rms",
          limits: { "A/B": 1.6, "B/C": 3.2, "C/D": 5.2 },
          source: { title: "Hollowmere site rule 1", where: "table 1", provenance: "printed", page: "p. 1" },
        },
      ],
    },
    {
      when: { power: { above: 15, to: 300 }, support: "flexible" },
      criteria: [
        {
          as: "mm/s rms",
          limits: { "A/B": 2.2, "B/C": 4.2, "C/D": 6.8 },
          source: { title: "Hollowmere site rule 1", where: "table 1", provenance: "printed", page: "p. 1" },
        },
      ],
    },
  ],
};

/** The file of a scheme of one's own, ready to be filled in. */
export function schemeTemplate(): string {
  return `${JSON.stringify(template, null, 2)}\n`;
}
