/** A type of values, as typed functions take it. */
interface MathType {
  readonly name: string;
  readonly test: (value: unknown) => boolean;
}

/** The maker of typed functions of an instance. */
export type Typed = ((name: string, signatures: Record<string, (...args: never[]) => unknown>) => unknown) & {
  addType(type: MathType): void;
  addTypes(types: readonly MathType[], before: string): void;
};

/** The functions of an instance, by name. */
export type Own = Readonly<Record<string, ((...values: readonly unknown[]) => unknown) | undefined>>;

/** What a typed function does, by the types of what it is given. */
export type Signatures = Record<string, (...args: never[]) => unknown>;

/** One function for several kinds of arguments. */
export const each = (types: readonly string[], run: (...args: unknown[]) => unknown): Signatures =>
  Object.fromEntries(types.map((one) => [one, run]));
