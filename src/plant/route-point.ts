import { cachedWithRefusals, inPlace } from "../core/index";
import { requirePointName } from "../severity/index";

/** A name that was found to be one; whatever is wrong with another is kept too, since a route has few names. */
const named = /* @__PURE__ */ cachedWithRefusals(
  (point) => {
    inPlace({ option: "point" }, () => requirePointName(point));
    return point;
  },
  { room: 10_000 },
);

/**
 * Refuses a point whose name says more than where it is: a state, a unit or another reading, as {@link parsePoints} does.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireNamed(point: string | undefined): void {
  const name = point?.trim() ?? "";
  if (name !== "") named(name);
}
