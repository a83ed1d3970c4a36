import { probeGap } from "../amplitude/index";
import { cautions, visibleText } from "../core/index";
import { significant } from "../reading/index";
import type { Report } from "./value";

/** Where a shaft stands by a gap voltage, and how far it has moved since the cold gap. */
export function gapReport(volts: string, sensitivity: string, range: string, cold: string | undefined): Report {
  const found = probeGap(volts, { sensitivity, range, ...(cold !== undefined && { cold }) });
  const { percent, range: ends, room, movement, assumedFacts, warnings } = found;
  const length = ({ um, mil }: typeof room.away): string => `${significant(um, 4)} um (${significant(mil, 4)} mil)`;
  return {
    report: [
      `gap: ${significant(found.volts, 4)} V, ${significant(percent)} % of ${ends.map((end) => significant(end, 4)).join(" to ")} V`,
      ...(movement === null
        ? []
        : [
            `moved: ${movement.direction === "not moved" ? "" : `${length(movement)} `}${movement.direction} since ${significant(movement.cold, 4)} V`,
          ]),
      `room: ${length(room.towards)} towards the probe, ${length(room.away)} away`,
      ...warnings.map((text) => `  warning: ${text}`),
      ...assumedFacts.map((text) => `  assumed: ${text}`),
      ...cautions.map((caution) => `  caution: ${caution}`),
    ]
      .map(visibleText)
      .join("\n"),
    data: found,
  };
}
