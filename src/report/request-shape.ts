import { orNothing, orNull, provenanceShape, requireText, type Shape, shown, VeladisError } from "../core/index";
import type { TripSettings } from "../device/index";
import { assumedShape, baselineShape, historyShape, readingShape } from "../setpoints/index";
import { TripLogic } from "../trip/index";
import type { SheetRequest } from "./sheet-request";

type ShapeOf<Data> = { readonly [Name in keyof Data]-?: Shape };

function factsShape(value: unknown, where: string): void {
  if (typeof value !== "object" || value === null) {
    throw new VeladisError("wrong-type", {
      expected: `${where}: texts by name`,
      received: shown(value),
    });
  }
  for (const [name, fact] of Object.entries(value)) requireText(fact, `${where}: a text for ${shown(name)}`);
}

/**
 * What a setpoint and verification sheet is made of, by the name of the part. Made when it is asked for, so that
 * bundles without sheets do without it.
 */
export function requestShape(): ShapeOf<SheetRequest> {
  const source = {
    title: "text",
    where: orNothing("text"),
    provenance: provenanceShape,
    page: orNothing("text"),
    note: orNothing("text"),
    disputed: orNothing("text"),
    by: orNothing("text"),
    on: orNothing("text"),
    second: orNothing("text"),
    shipped: orNothing("text"),
  } as const;

  const reasons = [{ about: orNothing("text"), text: "text", source }] as const;

  const setpoint = {
    asked: readingShape,
    stored: readingShape,
    difference: "number",
    percent: "number",
    acts: "text",
    effect: "text",
    reset: readingShape,
    range: ["number"],
    atOnce: "truth",
    reasons,
    assumed: assumedShape,
    history: historyShape,
  } as const;

  const proposal = {
    as: "text",
    baseline: "number or null",
    alarm: orNull(setpoint),
    trip: orNull(setpoint),
    limits: orNothing({ kind: "text", lower: "number", upper: "number or null" }),
    raised: orNothing({
      ...{ factor: "number", hertz: ["number"], speed: ["number"], seconds: orNothing("number") },
      ...{ alarm: orNull(readingShape), trip: orNull(readingShape), unprotected: ["text"], reasons },
    }),
    statistical: orNull({ k: "number", value: "number", withoutOutliers: "number", reasons }),
    delay: { alarm: "number", trip: "number", longest: "number", reasons },
    hysteresis: { percent: "number", reasons },
    warnings: [{ code: "text", text: "text" }],
    schemes: [
      {
        ...{ scheme: "text", standard: "text", edition: "text", machineClass: "text" },
        ...{ lower: "number", upper: "number or null" },
      },
    ],
    assumedFacts: ["text"],
    setAside: ["text"],
    assumed: assumedShape,
    provenance: provenanceShape,
    verified: "truth",
    confirmed: ["text"],
    cautions: ["text"],
  } as const satisfies ShapeOf<NonNullable<SheetRequest["proposal"]>>;

  const point = {
    known: readingShape,
    indicated: readingShape,
    as: "text",
    error: "number",
    errorPercent: "number",
    errorDecibels: "number or null",
    tolerance: "number",
    uncertainty: "number or null",
    parts: [{ name: "text", stated: "text", standard: "number", share: "number" }],
    method: orNull("text"),
    verdict: "text",
    call: "text",
    acceptance: { below: "number", above: "number" },
    rule: "text",
    ruleText: "text",
    assumed: assumedShape,
    history: historyShape,
    cautions: ["text"],
  } as const;

  const check = {
    ...point,
    toleranceBelow: orNothing("number"),
    shown: readingShape,
    expected: orNothing(readingShape),
  } as const satisfies ShapeOf<NonNullable<SheetRequest["check"]>>;
  const switching = { ...point, between: ["number"] } as const satisfies ShapeOf<
    NonNullable<SheetRequest["tripPoint"]>
  >;
  const onLine = { ...check, offLine: "number" } as const;

  const linearity = {
    as: "text",
    slope: "number",
    offset: "number",
    points: [onLine],
    worst: onLine,
    nonLinearity: "number",
    verdict: "text",
    assumed: assumedShape,
  } as const satisfies ShapeOf<NonNullable<SheetRequest["linearity"]>>;

  const named = { ...check, point: "text" } as const;

  const points = {
    points: [named],
    worst: named,
    verdict: "text",
    assumed: assumedShape,
  } as const satisfies ShapeOf<NonNullable<SheetRequest["points"]>>;

  const plan = {
    threshold: readingShape,
    reset: readingShape,
    assumed: assumedShape,
    steps: [
      {
        number: "number",
        what: "text",
        hertz: "number or null",
        speed: "number or null",
        level: orNull(readingShape),
        displacement: orNull(readingShape),
        acceleration: orNull(readingShape),
        signals: orNothing([{ value: "number", type: "text", by: "text" }]),
        possible: "truth",
        limitedBy: ["text"],
        expect: "text",
      },
    ],
    possible: "truth",
    told: orNothing([{ name: "text", text: "text" }]),
    before: ["text"],
    notes: ["text"],
    cautions: ["text"],
  } as const satisfies ShapeOf<NonNullable<SheetRequest["plan"]>>;

  return {
    machine: (value: string) => requireText(value, "what the machine is called", { option: "machine" }),
    facts: orNothing(factsShape),
    toFill: orNothing(["text"]),
    picture: orNothing({ svg: "text", text: "text", file: orNothing("text") }),
    baseline: orNothing(baselineShape),
    proposal: orNothing(proposal),
    settings: orNothing((value: TripSettings) => new TripLogic(value)),
    known: orNothing("text"),
    check: orNothing(check),
    asFoundAsLeft: orNothing({
      asFound: check,
      asLeft: check,
      adjustment: "number or null",
      meaning: "text",
      assumed: assumedShape,
    }),
    linearity: orNothing(linearity),
    points: orNothing(points),
    tripPoint: orNothing(switching),
    resetPoint: orNothing(switching),
    delay: orNothing({
      set: "number",
      measured: ["number"],
      worstError: "number",
      worstPercent: "number or null",
      tolerance: "number",
      verdict: "text",
    }),
    plan: orNothing(plan),
    remarks: orNothing(["text"]),
  };
}
