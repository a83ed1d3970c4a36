import { requireKnownOptions } from "../core/index";
import { checkKeys, type KnownCheck } from "./check-against-known";

/** Refuses what stands beside the levels of several checks and is no part of one. */
export function requireRest(rest: Omit<KnownCheck, "known" | "indicated">): void {
  requireKnownOptions(rest, checkKeys, {
    what: "a part of a check",
    form: 'what goes for all levels, such as { tolerance: "5 %" }',
    place: { parameter: "rest" },
  });
}
