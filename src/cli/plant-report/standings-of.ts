import type { DueCheck, JudgedRoute, Plant, RouteVerdict } from "../../plant/index";
import { gravities, type ReadPoint, type ReportFinding, type Standing } from "./machine-report";

/** What is known of all machines of a plant. */
export interface PlantState {
  readonly plant: Plant;
  /** Undefined where no route was given. */
  readonly route: JudgedRoute | undefined;
  readonly findings: readonly ReportFinding[];
  readonly due: readonly DueCheck[];
}

/** Things by a key of theirs, in their order. */
function grouped<One, Key>(all: readonly One[], keyOf: (one: One) => Key): ReadonlyMap<Key, readonly One[]> {
  const groups = new Map<Key, One[]>();
  for (const one of all) {
    const group = groups.get(keyOf(one));
    if (group === undefined) groups.set(keyOf(one), [one]);
    else group.push(one);
  }
  return groups;
}

/** How each machine of the list stands, in its order. */
export function standingsOf({ plant, route, findings, due }: PlantState): Standing[] {
  const verdicts = grouped(route?.verdicts ?? [], ({ tag }) => tag);
  const gravest = [...findings].sort((a, b) => gravities.indexOf(a.gravity) - gravities.indexOf(b.gravity));
  const found = grouped(gravest, ({ line }) => line);
  const dueOf = new Map(due.map((one) => [one.line, one]));
  const refused = grouped(
    (route?.refused ?? []).filter(({ from }) => from === "route"),
    ({ tag }) => tag,
  );
  const pointOf = (verdict: RouteVerdict): ReadPoint => ({
    verdict,
    basis: (route as JudgedRoute).bases[verdict.basis] as ReadPoint["basis"],
  });
  return plant.machines.map((machine) => ({
    machine,
    findings: found.get(machine.line) ?? [],
    points: (verdicts.get(machine.tag) ?? []).map(pointOf),
    unjudged: refused.get(machine.tag) ?? [],
    due: dueOf.get(machine.line) as DueCheck,
  }));
}
