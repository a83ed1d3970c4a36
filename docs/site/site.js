// The theme puts a link inside the button that opens a branch of the navigation, which a screen reader cannot reach.
// The link is moved beside the button, and the button named after it.

/** Moves the links out of the buttons below an element. */
function partBranches(element) {
  for (const link of element.querySelectorAll("details > summary > a")) {
    const summary = link.parentElement;
    const details = summary.parentElement;
    summary.setAttribute("aria-label", `${link.textContent.trim()}: open or close`);
    details.parentElement.classList.add("branch");
    details.before(link);
  }
}

const navigation = document.getElementById("tsd-nav-container");
if (navigation) {
  partBranches(navigation);
  new MutationObserver(() => partBranches(navigation)).observe(navigation, { childList: true, subtree: true });
}

// The home page has the project's name as its own title and again as that of the README: one is enough.
const titles = [...document.querySelectorAll("h1")];
if (titles[1] && titles[0].textContent.trim() === titles[1].textContent.trim()) titles[0].parentElement.remove();

// The converter stands on the home page, below its first paragraph.
const { base = "./" } = document.documentElement.dataset;
const isHome = base === "./" && /(^|\/)(index\.html)?$/.test(location.pathname);
const introduction = isHome && document.querySelector(".col-content .tsd-typography p");
if (introduction) {
  const place = document.createElement("section");
  place.dataset.live = "converter";
  place.setAttribute("aria-label", "Converter");
  introduction.after(place);
}

// The library comes only to pages that use it. A plain script, since a page opened from a file may not load modules.
if (document.querySelector("[data-live]")) {
  const script = document.createElement("script");
  script.src = `${base}assets/live.js`;
  document.body.append(script);
}
