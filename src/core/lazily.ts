/** A value that is made when it is first asked for, and kept: what most imports never read costs them nothing. */
export function lazily<Value extends NonNullable<unknown>>(make: () => Value): () => Value {
  let made: Value | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
