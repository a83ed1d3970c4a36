import { frozen } from "../../core/index";
import { type RelaySettings, relayNow } from "../../device/index";
import { COMMON_PRACTICE } from "../../setpoints/index";
import { type AuditCase, known } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** Contact and coil of a machine, with the contact while nothing is wrong. */
function relayOf({ machine }: AuditCase) {
  const contact = known(machine.settings.contact, "the contact");
  const coil = known(machine.settings.coil, "the coil");
  const relay: Pick<RelaySettings, "contact" | "coil"> = { contact, coil };
  return { relay, words: `${contact} contact, ${coil} coil`, healthy: relayNow(relay, false, true) };
}

const PHILOSOPHY = "let the philosophy of the site decide, and test what nobody sees more often";

/** Which failures nobody would see at the contact. */
export const failureRules = /* @__PURE__ */ frozen({
  "sensor failure unseen": {
    severity: "note",
    says: "a failure of the sensor, or of the wire to it, that neither trips nor shows at the contact",
    why: "the machine then runs without protection, and nobody knows it",
    source: COMMON_PRACTICE,
    mend: PHILOSOPHY,
    check: ({ machine }) => {
      const fault = known(machine.settings.sensorFault, "what a sensor fault does");
      if (fault === "alarm") return undefined;
      const does = fault === "hold" ? "the output stands still" : "the output stays as it is";
      return { what: `a sensor fault is set to ${fault}: ${does}, so that the contact does not show it` };
    },
  },
  "wire failure unseen": {
    severity: "note",
    says: "a break of the wire to the contact that looks like a healthy machine",
    why: "a trip would never arrive",
    source: COMMON_PRACTICE,
    mend: `${PHILOSOPHY}; a contact that is closed while all is well shows a break`,
    check: (machine) => {
      const { words, healthy } = relayOf(machine);
      if (healthy.contact === "closed") return undefined;
      return { what: `with ${words} the contact is open while all is well: a broken wire looks the same` };
    },
  },
  "power failure unseen": {
    severity: "note",
    says: "a loss of the device's power that looks like a healthy machine",
    why: "a device without power never trips",
    source: COMMON_PRACTICE,
    mend: `${PHILOSOPHY}; a coil that is energised while all is well shows a loss of power`,
    check: (machine) => {
      const { relay, words, healthy } = relayOf(machine);
      const { contact } = relayNow(relay, false, false);
      if (contact !== healthy.contact) return undefined;
      return { what: `with ${words} the contact stays ${contact} without power, as while all is well` };
    },
  },
  "relay failure unseen": {
    severity: "note",
    says: "a burnt-out coil that looks like a healthy machine",
    why: "the relay could not act any more; a welded contact is seen with no contact and coil, only by a test of the trip",
    source: COMMON_PRACTICE,
    mend: `${PHILOSOPHY}; a coil that is energised while all is well shows that it is burnt out`,
    check: (machine) => {
      const { words, healthy } = relayOf(machine);
      if (healthy.coil === "energised") return undefined;
      return { what: `with ${words} the coil is de-energised while all is well: one that is burnt out looks the same` };
    },
  },
} as const satisfies AuditRules);
