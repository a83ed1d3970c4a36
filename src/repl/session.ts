import { requireList, shown, VeladisError } from "../core/index";
import type { Scheme } from "../severity/index";
import type { Engine } from "./engine";
import type { Value } from "./value";

/** What a calculator remembers between lines. */
export interface Session {
  readonly variables: Map<string, Value>;
  /** The schemes by which it judges and proposes; the built-in ones if not given. */
  readonly schemes?: readonly Scheme[];
  /** mathjs, once an expression has needed it. */
  engine?: Engine;
}

/**
 * A calculator with no variables yet.
 *
 * @param schemes - those by which it judges and proposes, such as {@link confirmedSchemes} gives; the built-in ones if
 *   not given
 * @throws {@link VeladisError} `wrong-type` or `missing-fact`
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
  return { variables: new Map(), ...(schemes !== undefined && { schemes: requireList(schemes, "schemes as a list") }) };
}

/**
 * The session itself if it is one.
 *
 * @throws {@link VeladisError} `missing-fact` or `wrong-type`
 */
export function checkedSession(session: Session): Session {
  if (session?.variables instanceof Map) return session;
  throw new VeladisError(session === undefined ? "missing-fact" : "wrong-type", {
    expected: "a session as newSession returns it",
    received: shown(session),
  });
}
