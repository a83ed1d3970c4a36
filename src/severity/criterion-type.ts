import { type ParsedType, parsedType } from "../reading/index";
import type { Criterion } from "./scheme";

const types = /* @__PURE__ */ new WeakMap<Criterion, ParsedType>();

/**
 * What the limits of a criterion are written in, taken apart once. Kept beside the table and not in it: a table is plain
 * data, and a bundle of a single one holds no parser.
 */
export function criterionType(criterion: Criterion): ParsedType {
  let type = types.get(criterion);
  if (type === undefined) {
    type = parsedType(criterion.as);
    types.set(criterion, type);
  }
  return type;
}
