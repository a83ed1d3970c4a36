import { probeGap, probeLengthText, voltsText } from "../amplitude/index";
import { cautions, visibleText } from "../core/index";
import { significant } from "../reading/index";
import type { Report } from "./value";

/** Where a shaft stands by a gap voltage, and how far it has moved since the cold gap. */
export function gapReport(volts: string, sensitivity: string, range: string, cold: string | undefined): Report {
  const found = probeGap(volts, { sensitivity, range, ...(cold !== undefined && { cold }) });
  const { percent, range: ends, room, movement, assumedFacts, warnings } = found;
  return {
    report: [
      `gap: ${voltsText(found.volts)}, ${significant(percent)} % of ${ends.map((end) => significant(end, 4)).join(" to ")} V`,
      ...(movement === null
        ? []
        : [
            `moved: ${movement.direction === "not moved" ? "" : `${probeLengthText(movement)} `}${movement.direction} since ${voltsText(movement.cold)}`,
          ]),
      `room: ${probeLengthText(room.towards)} towards the probe, ${probeLengthText(room.away)} away`,
      ...warnings.map((text) => `  warning: ${text}`),
      ...assumedFacts.map((text) => `  assumed: ${text}`),
      ...cautions.map((caution) => `  caution: ${caution}`),
    ]
      .map(visibleText)
      .join("\n"),
    data: found,
  };
}
