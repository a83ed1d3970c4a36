export {
  balanceGrade,
  balanceGrades,
  centrifugalForce,
  gradeOfUnbalance,
  type PermissibleUnbalance,
  permissibleEccentricity,
  permissibleUnbalance,
  type Rotor,
  unbalanceOf,
} from "./balance";
