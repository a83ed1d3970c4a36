export { balanceGrade, balanceGrades, permissibleEccentricity } from "./balance-grade";
export { unbalanceHistories } from "./balance-steps";
export { convertUnbalance } from "./convert-unbalance";
export { type JournalUnbalance, journalUnbalance } from "./journal-unbalance";
export { kilogramsOrNone } from "./mass";
export {
  gradeOfUnbalance,
  type PermissibleUnbalance,
  permissibleUnbalance,
} from "./permissible-unbalance";
export type { Rotor } from "./rotor";
export { centrifugalForce, unbalanceOf } from "./unbalance";
