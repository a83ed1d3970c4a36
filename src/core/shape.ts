import { type ErrorPlace, shown, VeladisError } from "./error";
import { requireFinite } from "./guards";
import { inPlace } from "./in-place";

/** What stands in a place of plain data: a kind, the parts of an object, or what every element of a list is. */
export type Shape =
  | "text"
  | "number"
  | "truth"
  | "number or null"
  | { readonly [name: string]: Shape }
  | readonly [element: Shape]
  | ((value: never, where: string) => unknown);

/** A shape whose place may be empty. */
export function orNull(shape: Shape): Shape {
  return (value: unknown, where: string) => value === null || requireShape(value, shape, where);
}

/** A shape that may be left out. */
export function orNothing(shape: Shape): Shape {
  return (value: unknown, where: string) => value === undefined || requireShape(value, shape, where);
}

/** The place that a path tells: the parameter it begins with, its first index, and the key that it ends in. */
export function placeOf(where: string): ErrorPlace {
  const [parameter = "", ...path] = where.split(/[.[\]]+/).filter((part) => part !== "");
  const index = path.find((part) => /^\d+$/.test(part));
  const option = path.filter((part) => !/^\d+$/.test(part)).at(-1);
  return { parameter, ...(index !== undefined && { index: Number(index) }), ...(option !== undefined && { option }) };
}

function refuse(value: unknown, where: string, what: string): never {
  throw new VeladisError("wrong-type", {
    expected: `${where}: ${what}`,
    received: shown(value),
    ...placeOf(where),
  });
}

/**
 * Data that another function has returned, held against its shape before any of it is printed or drawn.
 *
 * @param where - the place, for the message, e.g. `"check"`; parts are named behind it: `check.known.value`
 * @throws {@link VeladisError} `missing-option`, `wrong-type`, `not-a-number`, `not-finite`
 */
export function requireShape(value: unknown, shape: Shape, where: string): true {
  if (typeof shape === "function") inPlace(placeOf(where), () => shape(value as never, where));
  else if (shape === "text") typeof value === "string" || refuse(value, where, "a text");
  else if (shape === "truth") typeof value === "boolean" || refuse(value, where, "true or false");
  else if (typeof shape === "string") {
    if (value === undefined) refuse(value, where, `a ${shape}`);
    if (value !== null || shape === "number") requireFinite(value as number, `${where}: a ${shape}`, placeOf(where));
  } else if (isList(shape)) {
    if (!Array.isArray(value)) refuse(value, where, "a list");
    for (const [i, element] of (value as unknown[]).entries()) requireShape(element, shape[0], `${where}[${i}]`);
  } else {
    if (typeof value !== "object" || value === null) refuse(value, where, "an object");
    for (const [name, part] of Object.entries(shape)) requireShape((value as never)[name], part, `${where}.${name}`);
  }
  return true;
}

function isList(shape: object): shape is readonly [element: Shape] {
  return Array.isArray(shape);
}
