/** Marks a scheme that passed its checks; not enumerable, so that JSON and copies do not carry it. */
const CHECKED = /* @__PURE__ */ Symbol("checked scheme");

/** The scheme itself, marked as checked. */
export function asChecked<T extends object>(scheme: T): T {
  return Object.defineProperty(scheme, CHECKED, {});
}

/** True for a scheme that passed its checks. */
export function isChecked(scheme: object): boolean {
  return CHECKED in scheme;
}
