import { cautions, requireGiven, requireKnownKeys, requireShape, withParameters } from "../core/index";
import { factsSection, settingsSection } from "./device-sections";
import { baselineSection, proposalSections } from "./proposal-sections";
import { requestShape } from "./request-shape";
import type { Sheet } from "./sheet";
import { sheetAssumptions } from "./sheet-assumptions";
import type { SheetRequest } from "./sheet-request";
import { checkSections, planSections } from "./verification-sections";

/** The lines that people fill in; no name and no date is put in by itself. */
const BLANKS = [
  "Set by (name, signature, date)",
  "Proven by (name, signature, date)",
  "Decided by the person who answers for the machine (name, signature, date)",
  "Next proof due",
];

/**
 * A setpoint and verification sheet: what was set and why, what was proven, what was assumed, and blanks to sign.
 *
 * Write it with {@link sheetMarkdown}, {@link sheetHtml} or {@link sheetJson}.
 *
 * @throws {@link VeladisError} `missing-fact`, `wrong-type` for a part that is not what its function returns,
 *   `unknown-option` for a part that no sheet has, and as {@link TripLogic} for the settings
 * @example
 * ```ts
 * import { checkAgainstKnown, setpointSheet, sheetMarkdown } from "veladis/protection";
 *
 * const check = checkAgainstKnown({ known: "8 mm/s rms at 2400 r/min", indicated: "7.3 mm/s rms", tolerance: "5 %" });
 * const sheet = setpointSheet({ machine: "ID fan 1, fan bearing, horizontal", check });
 * sheet.sections.map(({ title }) => title); // => ["Check against the known vibration"]
 * sheetMarkdown(sheet).split("\n")[0]; // => "# Setpoints and verification"
 * ```
 */
export function setpointSheet(request: SheetRequest): Sheet {
  return withParameters({ request }, () => {
    const shapes = requestShape();
    requireKnownKeys(
      requireGiven(request, 'a request such as { machine: "Circulation pump 3" }', { parameter: "request" }),
      shapes,
      "a part of a sheet",
    );
    for (const [name, shape] of Object.entries(shapes)) requireShape(request[name as keyof SheetRequest], shape, name);
    const { machine, picture, baseline, proposal, settings, plan, remarks = [] } = request;
    const assumed = sheetAssumptions(request);
    return {
      title: "Setpoints and verification",
      subject: machine,
      cautions,
      sections: [
        ...factsSection(request),
        ...(baseline === undefined ? [] : [baselineSection(baseline)]),
        ...(proposal === undefined ? [] : proposalSections(proposal)),
        ...(settings === undefined ? [] : [settingsSection(settings)]),
        ...checkSections(request),
        ...(plan === undefined ? [] : planSections(plan)),
        ...(assumed.length === 0 ? [] : [{ title: "Assumed", list: assumed }]),
        ...(remarks.length === 0 ? [] : [{ title: "Remarks", list: remarks }]),
      ],
      ...(picture !== undefined && { picture }),
      blanks: BLANKS,
      data: request,
    };
  });
}
