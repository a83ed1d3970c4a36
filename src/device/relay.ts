import { requireBoolean, requireChoice, requireGiven, requireKnownKeys, withParameters } from "../core/index";
import { deviceSettings } from "./device-settings";

/** Position of a contact while its coil is de-energised. */
export const contacts = /* @__PURE__ */ Object.freeze(["normally open", "normally closed"] as const);

/** State of the coil while nothing is wrong; normally energised is fail-safe: loss of power trips. */
export const coils = /* @__PURE__ */ Object.freeze(["normally energised", "normally de-energised"] as const);

/** Settings of the output relay; none has a default. */
export interface RelaySettings {
  /** Whether a set output stays until it is reset by hand. */
  readonly latching: boolean;
  /** Position of the contact while the coil is de-energised. */
  readonly contact: (typeof contacts)[number];
  /** State of the coil while nothing is wrong. */
  readonly coil: (typeof coils)[number];
}

/** What the relay does at one moment. */
export interface RelayStatus {
  /** What the control circuit sees: `trip` also when a fail-safe relay has lost its power. */
  readonly output: "healthy" | "trip";
  readonly coil: "energised" | "de-energised";
  readonly contact: "open" | "closed";
}

/** Whether a set output stays, checked: it has no default. */
export function requireLatching(latching: boolean): boolean {
  return requireBoolean(latching, "latching: whether a set output stays until it is reset by hand", {
    option: "latching",
  });
}

/** The position of a contact, checked. */
export function requireContact(contact: RelaySettings["contact"]): RelaySettings["contact"] {
  return requireChoice(contact, contacts, "contact: its position while the coil is de-energised", {
    option: "contact",
  });
}

/** The state of a coil, checked. */
export function requireCoil(coil: RelaySettings["coil"]): RelaySettings["coil"] {
  return requireChoice(coil, coils, "coil: its state while nothing is wrong", { option: "coil" });
}

/** Whether a coil that has lost its power trips. */
export function isFailSafe(coil: RelaySettings["coil"]): boolean {
  return coil === "normally energised";
}

/** The settings, checked; settings of a whole trip serve. */
export function requireRelay(settings: RelaySettings): RelaySettings {
  const { latching, contact, coil } = settings;
  return Object.freeze({
    latching: requireLatching(latching),
    contact: requireContact(contact),
    coil: requireCoil(coil),
  });
}

/**
 * Coil and contact of a relay.
 *
 * @param settings - position of the contact without power, and state of the coil while nothing is wrong
 * @param set - whether the logic calls for a trip
 * @param powered - whether the device has power
 * @throws {@link VeladisError} `missing-option`, `wrong-type`, `unknown-option`
 * @example
 * ```ts
 * import { relayStatus } from "veladis/protection";
 *
 * const failSafe = { latching: true, contact: "normally open", coil: "normally energised" } as const;
 * relayStatus(failSafe, false, true); // => { output: "healthy", coil: "energised", contact: "closed" }
 * relayStatus(failSafe, true, true); // => { output: "trip", coil: "de-energised", contact: "open" }
 * relayStatus(failSafe, false, false); // => { output: "trip", coil: "de-energised", contact: "open" }
 * ```
 */
export function relayStatus(settings: RelaySettings, set: boolean, powered: boolean): RelayStatus {
  return withParameters({ set, powered, settings }, () => {
    requireGiven(settings, "settings of a relay: latching, contact and coil", { parameter: "settings" });
    return relayNow(
      requireRelay(requireKnownKeys(settings, deviceSettings, "a setting of a device")),
      requireBoolean(set, "whether the logic calls for a trip", { parameter: "set" }),
      requireBoolean(powered, "whether the device has power", { parameter: "powered" }),
    );
  });
}

/** The same for settings that were checked. */
export function relayNow(settings: Omit<RelaySettings, "latching">, set: boolean, powered: boolean): RelayStatus {
  const failSafe = isFailSafe(settings.coil);
  const energised = powered && failSafe !== set;
  const closed = (settings.contact === "normally open") === energised;
  return {
    output: failSafe === energised ? "healthy" : "trip",
    coil: energised ? "energised" : "de-energised",
    contact: closed ? "closed" : "open",
  };
}
