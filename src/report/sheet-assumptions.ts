import { tripRules } from "../device/index";
import { type Assumption, assumptions } from "../reading/index";
import type { SheetRequest } from "./sheet-request";

/** What was assumed anywhere on the whole way to what a sheet says, in words. */
export function sheetAssumptions(request: SheetRequest): string[] {
  const { baseline, proposal, settings, check, asFoundAsLeft, linearity, points, tripPoint, resetPoint, plan } =
    request;
  const parts = [
    baseline,
    proposal,
    settings && tripRules(settings, settings.latching),
    check,
    asFoundAsLeft,
    linearity,
    points,
    tripPoint,
    resetPoint,
    plan,
  ];
  const names = new Set<Assumption>(parts.flatMap((part) => part?.assumed ?? []));
  return [...names].map((name) => assumptions[name]);
}
