import { lazily, nearest, shown, VeladisError } from "../../core/index";
import type { Answers } from "../answers";
import type { AnyShape } from "../shape-of";
import { commandShapes } from "./commands";
import { plantCheckShapes } from "./plant-checks";
import { plantShapes } from "./plants";
import { readingShapes } from "./readings";
import { routeShapes } from "./routes";
import { setpointShapes } from "./setpoints";
import { severityShapes } from "./severities";
import { signalShapes } from "./signals";
import { tripShapes } from "./trips";
import { uncertaintyShapes } from "./uncertainties";
import { verificationShapes } from "./verifications";

/** The fields of a kind of answer, by key, with those of the kinds that it is like; and whether it is a reading. */
export interface Fields {
  readonly fields: ReadonlyMap<string, string>;
  readonly isReading: boolean;
}

const allFields = /* @__PURE__ */ lazily(() => {
  const shapes = Object.entries<AnyShape>({
    ...readingShapes,
    ...signalShapes,
    ...severityShapes,
    ...uncertaintyShapes,
    ...setpointShapes,
    ...tripShapes,
    ...verificationShapes,
    ...plantCheckShapes,
    ...plantShapes,
    ...commandShapes,
    ...routeShapes,
  });
  const byKind = new Map(shapes);
  const linesOf = ({ like, keys }: AnyShape): [string, string][] => [
    ...(like === undefined ? [] : linesOf(byKind.get(like) as AnyShape)),
    ...Object.entries(keys),
  ];
  return new Map(
    shapes.map(([kind, shape]): [string, Fields] => [
      kind,
      { fields: new Map(linesOf(shape)), isReading: kind === "amplitude" || shape.like === "amplitude" },
    ]),
  );
});

/** The names of all kinds of answers. */
export function answerKinds(): readonly (keyof Answers)[] {
  return [...allFields().keys()] as (keyof Answers)[];
}

/**
 * The name of a kind of answer, or of a list of them, if there is one.
 *
 * @throws {@link VeladisError} `unknown-option`, `missing-fact` and `wrong-type`
 */
export function requireKindName<Kind extends string>(kind: Kind): Kind {
  const one = typeof kind === "string" && kind.endsWith("[]") ? kind.slice(0, -2) : kind;
  if (allFields().has(one)) return kind;
  // there are more than a hundred: the nearest say more than all
  const isText = typeof one === "string";
  throw new VeladisError(isText ? "unknown-option" : "wrong-type", {
    expected: 'a kind of answer, such as "verdict"; answerKinds() lists them',
    received: shown(kind),
    didYouMean: isText ? nearest(one.slice(0, 100), answerKinds()) : [],
    parameter: "kind",
  });
}

/** The fields of a kind of answer that there is. */
export function fieldsOf(kind: string): Fields {
  return allFields().get(kind) as Fields;
}
