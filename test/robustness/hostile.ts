/** Values that no one should hand over, each made anew. */
export const hostile: Readonly<Record<string, () => unknown>> = {
  undefined: () => undefined,
  null: () => null,
  NaN: () => Number.NaN,
  Infinity: () => Number.POSITIVE_INFINITY,
  "-Infinity": () => Number.NEGATIVE_INFINITY,
  "0": () => 0,
  "-0": () => -0,
  "-1": () => -1,
  "0.5": () => 0.5,
  "the least denormal": () => 5e-324,
  "1e-300": () => 1e-300,
  "1e308": () => 1e308,
  MAX_VALUE: () => Number.MAX_VALUE,
  "2^53": () => 2 ** 53,
  "a BigInt": () => 5n,
  "a symbol": () => Symbol("mm/s rms"),
  "a numeric text": () => "5",
  "a Number object": () => new Number(5),
  "a String object": () => new String("5 mm/s rms"),
  true: () => true,
  "an empty text": () => "",
  spaces: () => "  ",
  "a NUL": () => "\0",
  "half a surrogate pair": () => "\ud800",
  "a text": () => "no such thing",
  __proto__: () => "__proto__",
  constructor: () => "constructor",
  prototype: () => "prototype",
  toString: () => "toString",
  hasOwnProperty: () => "hasOwnProperty",
  "a function": () => () => 1,
  "an empty list": () => [],
  "a list of lists": () => [[[]]],
  "a list of nothing": () => [null, undefined],
  "a sparse list": () => new Array(3),
  "a list of NaN": () => [Number.NaN, Number.NaN, Number.NaN],
  "a list of huge numbers": () => [1e308, 1e308, 1e308, 1e308],
  "huge floats": () => new Float64Array(64).fill(Number.MAX_VALUE),
  "the least floats": () => new Float64Array(64).fill(5e-324),
  "NaN floats": () => new Float64Array(64).fill(Number.NaN),
  "no floats": () => new Float64Array(0),
  "an empty object": () => ({}),
  "an object of no prototype": () => Object.create(null),
  "facts of no prototype": () => Object.assign(Object.create(null), { at: "25 Hz", value: 1 }),
  "an object with __proto__ of its own": () => JSON.parse('{"__proto__": {"at": "25 Hz", "polluted": true}}'),
  "an object with constructor of its own": () => ({ constructor: { prototype: { polluted: true } }, valueOf: 5 }),
  "a list-like of no length": () => ({ length: -1 }),
  "a list-like of a million": () => ({ length: 1e15 }),
  "a Map": () => new Map([["at", "25 Hz"]]),
  "a Date of no time": () => new Date(Number.NaN),
  "a Date": () => new Date(0),
  "a RegExp": () => /x/,
  "a huge frequency": () => ({ hertz: 1e308 }),
  "the least frequency": () => ({ hertz: 5e-324 }),
  "a huge reading": () => "1e308 mm/s rms",
  "the least reading": () => "5e-324 mm/s rms",
  "no vibration": () => "0 mm/s rms at 25 Hz",
  "a level": () => "60 dB re 1 nm/s",
  "a reading of NaN": () => ({
    value: Number.NaN,
    unit: "mm/s",
    detector: "rms",
    quantity: "velocity",
    hertz: Number.NaN,
  }),
  "a reading of no unit": () => ({
    value: 1,
    unit: "__proto__",
    detector: "constructor",
    quantity: "toString",
    hertz: 1,
  }),
  "a reading by halves": () => ({ value: 4, unit: "mm/s" }),
};

/** Every place within plain data, as a path: `[0, "limits", "A/B"]`. */
export function placesIn(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null || path.length > 6) return [path];
  const keys: (string | number)[] =
    ArrayBuffer.isView(value) || Array.isArray(value) ? first(value as []) : Object.keys(value);
  return [path, ...keys.flatMap((key) => placesIn((value as Record<string, unknown>)[key], [...path, key]))];
}

/** The first and the last element stand for all. */
function first(list: ArrayLike<unknown>): number[] {
  return list.length > 1 ? [0, list.length - 1] : list.length === 1 ? [0] : [];
}

/** Puts a value in a place; whether the place took it. */
export function put(whole: unknown, path: readonly (string | number)[], value: unknown): boolean {
  const parent = path.slice(0, -1).reduce((part, key) => (part as Record<string, unknown>)[key], whole);
  try {
    (parent as Record<string | number, unknown>)[path[path.length - 1] as string] = value;
    return true;
  } catch {
    return false; // a BigInt into floats
  }
}

/** The paths of numbers within a result that are NaN or infinite. */
export function notFiniteIn(value: unknown, path = "", seen = new Set<object>()): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} = ${value}`];
  if (typeof value === "string") {
    // why a machine is refused names what was given for it, also where that stands in a query
    if (/\.refused(\.|$)|^\.(limits|query)$/.test(path)) return [];
    return /\bNaN\b|\bInfinity\b|undefined|\[object /.test(value) ? [`${path} says ${value.slice(0, 2000)}`] : [];
  }
  if ((typeof value !== "object" && typeof value !== "function") || value === null || seen.has(value)) return [];
  seen.add(value);
  if (ArrayBuffer.isView(value)) {
    const at = (value as Float64Array).findIndex((one) => typeof one === "number" && !Number.isFinite(one));
    return at < 0 ? [] : [`${path}[${at}] = ${(value as Float64Array)[at]}`];
  }
  if (value instanceof Map) return [...value].flatMap(([key, one]) => notFiniteIn(one, `${path}.${String(key)}`, seen));
  return Object.entries(value).flatMap(([key, one]) => notFiniteIn(one, `${path}.${key}`, seen));
}
