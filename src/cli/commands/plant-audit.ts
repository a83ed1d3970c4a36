import { VeladisError } from "../../core/index";
import { auditPlant, findingSeverities } from "../../plant/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { plantAuditText } from "../print/plant-audit-text";
import { findingsCsv } from "../print/plant-findings-csv";
import { listedPlant } from "./listed-plant";
import type { plantAuditPage } from "./plant-audit-page";
import { recordAudit } from "./plant-record";

/** Holds every machine of a list against its limits and the rules. */
export async function auditList(given: ParsedOptions<typeof plantAuditPage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  const { on, json, csv, "fail-on": failOn, "keep-going": keepGoing } = values;
  if (json && csv) {
    throw new VeladisError("unknown-option", { expected: "one of --json and --csv", received: "both", option: "csv" });
  }
  const { plant, schemes, file } = await listedPlant(given, texts[0], io);
  const audit = auditPlant(plant, { ...(on !== undefined && { on }), ...(schemes !== undefined && { schemes }) });
  const record = await recordAudit(values, plant, io);
  const findings = [...audit.findings, ...record.findings].sort(
    (one, other) => findingSeverities.indexOf(one.severity) - findingSeverities.indexOf(other.severity),
  );
  const told = values.changes === undefined ? {} : { changes: record.findings, changesRefused: record.refused };
  await io.out(
    json
      ? jsonLine("plant audit", audit, told)
      : csv
        ? findingsCsv(findings)
        : plantAuditText({ ...audit, findings }, file),
  );
  if (audit.refused.length + record.refused.length > 0 && !keepGoing) return exitCodes.refused;
  const worst = failOn === undefined ? [] : findingSeverities.slice(0, findingSeverities.indexOf(failOn) + 1);
  return findings.some(({ severity }) => worst.includes(severity)) ? exitCodes.reached : exitCodes.done;
}
