import { dataText, inPlace, requireKnownKeys, requirePositive, requireText, shown, VeladisError } from "../core/index";
import { latestDay, requireDay } from "./confirm-date";
import { requireName, requireOther, requirePage } from "./confirm-names";

/** One limit as a person read it in their own printed copy of the standard. */
export interface Confirmation {
  /** The id of the scheme. */
  readonly scheme: string;
  /** The edition of the copy in hand. */
  readonly edition: string;
  /** The row, the limit and its unit with detector, as {@link confirmableLimits} names them. */
  readonly row: string;
  readonly limit: string;
  readonly as: string;
  /** The value that the copy prints. */
  readonly printed: number;
  /** The page on which it stands. */
  readonly page: string;
  /** Who read it. */
  readonly by: string;
  /** On which day, as `2024-03-04`. */
  readonly on: string;
  /** Who else read it there; needed for a value that raises a limit. */
  readonly second?: string;
  /** True where the page was read again: for a value that looks like a slip and stands there all the same. */
  readonly reread?: boolean;
  /** The value that the check sheet showed; refused where the scheme has another by now. */
  readonly shipped?: number;
  /** Where the confirmation was read from, for refusals, e.g. `"line 4 of pumps.csv"`. */
  readonly readAt?: string;
}

const keys: Readonly<Record<keyof Confirmation, true>> = /* @__PURE__ */ Object.freeze({
  scheme: true,
  edition: true,
  row: true,
  limit: true,
  as: true,
  printed: true,
  page: true,
  by: true,
  on: true,
  second: true,
  reread: true,
  shipped: true,
  readAt: true,
});

/**
 * A confirmation that says all that it must; its row and its value are held against the scheme elsewhere.
 *
 * @param place - where it stands, for refusals
 * @throws {@link VeladisError} `wrong-type`, `unknown-option`, `missing-fact`, `syntax`, `out-of-range`, `not-positive`
 */
export function checkedConfirmation(given: unknown, place: string): Confirmation {
  return inPlace({ index: Number(/\d+/.exec(place)?.[0]) - 1 }, () => confirmationOf(given, place));
}

function confirmationOf(given: unknown, place: string): Confirmation {
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    throw new VeladisError("wrong-type", {
      expected: `${place}: a confirmation with ${Object.keys(keys).slice(0, 9).join(", ")}`,
      received: shown(given),
    });
  }
  const one = requireKnownKeys(given as Confirmation, keys, `${place}: a part of a confirmation`);
  const text = (name: "scheme" | "edition" | "row" | "limit" | "as"): string => {
    const value = one[name];
    const what = `${place}: the ${name === "as" ? "unit with detector (as)" : name}, as the check sheet has it`;
    if (value === undefined)
      throw new VeladisError("missing-fact", { expected: what, received: "nothing", option: name });
    return requireText(value, what, { option: name }).trim().replace(/\s+/g, " ");
  };
  const needed = (option: "page" | "by", what: string, checked: (value: unknown, what: string) => string): string =>
    inPlace({ option }, () => {
      if (one[option] !== undefined) return checked(one[option], what);
      throw new VeladisError("missing-fact", { expected: what, received: "nothing" });
    });
  const names = {
    scheme: text("scheme"),
    edition: text("edition"),
    row: text("row"),
    limit: text("limit"),
    as: text("as"),
  };
  if (one.printed === undefined) {
    throw new VeladisError("missing-fact", {
      expected: `${place}: the value that the copy prints`,
      received: "nothing",
      option: "printed",
    });
  }
  const printed = requirePositive(one.printed, `${place}: the value that the copy prints, above zero`, {
    option: "printed",
  });
  const page = needed("page", `${place}: the page on which the value stands`, requirePage);
  const by = needed("by", `${place}: by, the name of who read it`, requireName);
  const on = inPlace({ option: "on" }, () => requireDay(one.on, `${place}: on, when it was read`));
  if (on > latestDay()) {
    throw new VeladisError("out-of-range", { expected: `${place}: on, a day that is not in the future`, received: on });
  }
  if (/^\d{4}$/.test(names.edition) && on < names.edition) {
    throw new VeladisError("out-of-range", {
      expected: `${place}: on, a day in the year of the edition or later, ${names.edition}`,
      received: on,
    });
  }
  const second =
    one.second === undefined
      ? undefined
      : inPlace({ option: "second" }, () => requireOther(one.second, by, `${place}: second, the name of`));
  if (one.reread !== undefined && typeof one.reread !== "boolean") {
    throw new VeladisError("wrong-type", {
      expected: `${place}: reread, true where the page was read again, else left out`,
      received: dataText(one.reread),
      option: "reread",
    });
  }
  if (one.shipped !== undefined)
    requirePositive(one.shipped, `${place}: the value that the check sheet showed`, { option: "shipped" });
  return {
    ...one,
    ...names,
    printed,
    page,
    by,
    on,
    ...(second !== undefined && { second }),
  };
}
