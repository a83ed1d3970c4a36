/** The state of fields, kept in the link behind `#`, so that a page can be sent or found again as it was left. */

/**
 * Sets fields by the link, and gives what writes their values into it; a value as at the beginning is left out.
 *
 * @param fields - by the names that they have in the link
 */
export function linkState(fields) {
  const all = Object.entries(fields);
  const first = new Map(all.map(([name, { control }]) => [name, control.value]));
  const told = new URLSearchParams(location.hash.slice(1));
  for (const [name, { control }] of all) {
    if (!told.has(name)) continue;
    control.value = told.get(name);
    // of a choice that there is none of, nothing would be chosen
    if (control.tagName === "SELECT" && control.selectedIndex < 0) control.value = first.get(name);
  }
  return {
    keep() {
      const changed = all.filter(([name, { control }]) => control.value !== first.get(name));
      const text = new URLSearchParams(changed.map(([name, { control }]) => [name, control.value])).toString();
      // an anchor of the page stays as long as nothing was changed
      if (text === "" && ![...told.keys()].some((name) => first.has(name))) return;
      for (const name of [...told.keys()]) told.delete(name);
      for (const [name, { control }] of changed) told.set(name, control.value);
      history.replaceState(null, "", text === "" ? location.pathname + location.search : `#${text}`);
    },
  };
}
