export { balanceGrade, balanceGrades, permissibleEccentricity } from "./balance-grade";
export { kilogramsOrNone } from "./mass";
export {
  gradeOfUnbalance,
  type PermissibleUnbalance,
  permissibleUnbalance,
  type Rotor,
} from "./permissible-unbalance";
export { centrifugalForce, unbalanceOf } from "./unbalance";
