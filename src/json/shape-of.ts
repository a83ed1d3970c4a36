/** What a value is, as the first word of a field says it; parts, sources and histories have names of their own. */
type Base<Value> = [Value] extends [number]
  ? "number"
  : [Value] extends [boolean]
    ? "truth"
    : [Value] extends [string]
      ? "text"
      : string;

/** A field as it must be written for a value of this type: nothing that may be null or left out is forgotten. */
type FieldOf<Value> =
  `${Base<Exclude<Value, null | undefined>>}${null extends Value ? "|null" : ""}${undefined extends Value ? "?" : ""}`;

/**
 * What stands under each key of an answer, every key once. A field is a word (`number`, `truth`, `text`, `plain` for data
 * that is passed on as it is, `samples` for a Float64Array, `source`, `history`, or the kind of another answer), with `[]`
 * for a list, `{}` for a record, `|null` where there may be none, and `?` where it may be left out.
 */
type FieldsOf<Answer> = { readonly [Key in keyof Answer]-?: FieldOf<Answer[Key]> };

/** The shape of a kind of answer: its fields, behind those of the kind that it is `like`. */
type ShapeOf<Answer> = { readonly keys: FieldsOf<Answer> } | LikeOf<Answer>;

/** A shape that has the fields of another kind too. */
interface LikeOf<Answer> {
  readonly like: string;
  readonly keys: Partial<FieldsOf<Answer>>;
}

/** The shapes of several kinds. */
export type ShapesOf<Answers> = { readonly [Kind in keyof Answers]: ShapeOf<Answers[Kind]> };

/** A shape as it is read. */
export interface AnyShape {
  readonly like?: string;
  readonly keys: Readonly<Record<string, string>>;
}
