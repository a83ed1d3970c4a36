import { cached } from "../core/index";

/** A field of a shape, taken apart. */
export interface Field {
  /** What each element is: a word, or the kind of an answer. */
  readonly of: string;
  /** Around it: a list, a record, or nothing. */
  readonly in: "list" | "record" | undefined;
  readonly orNull: boolean;
  readonly orNothing: boolean;
}

/** A field of a shape, such as `"limit{}"` or `"number|null?"`. */
export const fieldOf = /* @__PURE__ */ cached((written: string): Field => {
  const [, of, around, orNull, orNothing] = /^(.*?)(\[\]|\{\})?(\|null)?(\?)?$/.exec(written) as RegExpExecArray;
  return {
    of: of as string,
    in: around === undefined ? undefined : around === "[]" ? "list" : "record",
    orNull: orNull !== undefined,
    orNothing: orNothing !== undefined,
  };
});
