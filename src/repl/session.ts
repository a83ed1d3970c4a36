import { shown, VeladisError } from "../core/index";
import type { Scheme } from "../severity/index";
import type { Engine } from "./engine";
import type { Value } from "./value";

/** What a calculator remembers between lines. */
export interface Session {
  readonly variables: Map<string, Value>;
  /** The names of numbers that stand without the ± of the readings they are from. */
  bare?: ReadonlySet<string>;
  /** The schemes by which it judges and proposes; the built-in ones if not given. */
  readonly schemes?: readonly Scheme[];
  /** mathjs, once an expression has needed it. */
  engine?: Engine;
}

/** Schemes, as far as can be told without any table of limits: who judges by them checks them whole. */
function requireSchemes(schemes: readonly Scheme[]): readonly Scheme[] {
  // a list is asked for here and not by `requireList`, whose refusals would weigh more than all the rest
  const all: readonly (Scheme | undefined)[] = Array.isArray(schemes) ? schemes : [undefined];
  for (const one of all) {
    if (one?.id && one.kind && one.standard && Array.isArray(one.classes)) continue;
    throw new VeladisError("wrong-type", {
      expected: "schemes as a list, each with id, kind, standard and classes",
      received: shown(one ?? schemes),
      parameter: "schemes",
      ...(one !== undefined && { index: all.indexOf(one) }),
    });
  }
  return schemes;
}

/**
 * A calculator with no variables yet.
 *
 * @param schemes - those by which it judges and proposes, such as {@link confirmedSchemes} gives; the built-in ones if
 *   not given
 * @throws {@link VeladisError} `wrong-type` for what is no list, and for what in it is no scheme
 * @example
 * ```ts
 * import { evaluateLine, newSession } from "veladis/mathjs";
 *
 * const session = newSession();
 * await evaluateLine("a = 0.25 in/s pk at 1500 r/min", session);
 * (await evaluateLine("a * 1.25 to mm/s rms", session)).text; // => "5.61 mm/s rms  (sine)"
 * ```
 */
export function newSession(schemes?: readonly Scheme[]): Session {
  return { variables: new Map(), ...(schemes !== undefined && { schemes: requireSchemes(schemes) }) };
}

/**
 * The session itself if it is one.
 *
 * @throws {@link VeladisError} `missing-option` or `wrong-type`
 */
export function checkedSession(session: Session): Session {
  if (session?.variables instanceof Map) return session;
  throw new VeladisError("wrong-type", {
    expected: "a session as newSession returns it",
    received: shown(session),
    parameter: "session",
  });
}
