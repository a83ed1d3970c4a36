import { confirmableLimits, confirmScheme, type Scheme } from "veladis/severity";

/** Group 2 on rigid supports of ISO 20816-3:2022, as if the named limits were confirmed; signature invented. */
export function confirmedGroup2(limits: RegExp, printed = (shipped: number): number => shipped): Scheme {
  const signed = { page: "12", by: "H. Example", on: "2024-03-04" };
  return confirmScheme(
    "iso-20816-3-2022",
    confirmableLimits("iso-20816-3-2022")
      .filter(({ row, limit }) => row === "group 2, support rigid" && limits.test(limit))
      .map(({ scheme, edition, row, limit, as, shipped }) => ({
        ...{ scheme, edition, row, limit, as, printed: printed(shipped) },
        ...signed,
      })),
  );
}
