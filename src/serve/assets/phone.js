// The helper's page: what is told live, the tabs, what is said above the page, undo, the next helper's code.
import { at, headers, page, post, say, time } from "./common.js";
import { showPieces } from "./pieces.js";
import { openSteps, showWall } from "./wall.js";
import { showFound } from "./find.js";
import { startPhotos } from "./photos.js";

// ---- the place on the page
const keyed = () => [...document.querySelectorAll("[data-key]")].filter((one) => one.offsetParent);
// What is looked at stays where it is, whatever becomes longer or shorter above it.
const inPlace = (change) => {
  const under = at("top").getBoundingClientRect().bottom;
  const places = keyed().filter((one) => !one.closest("dialog")).map((one) => [one.dataset.key, one.getBoundingClientRect().top]).filter(([, top]) => top >= under);
  const scrolled = scrollY > 0;
  change();
  const now = new Map(keyed().map((one) => [one.dataset.key, one]));
  const held = places.find(([key]) => now.has(key));
  if (held && scrolled) scrollBy(0, now.get(held[0]).getBoundingClientRect().top - held[1]);
  return now;
};

// ---- above the page
page.lost = (text) => {
  if (at("lost").textContent === text && at("lost").hidden === !text) return;
  inPlace(() => {
    at("lost").textContent = text;
    at("lost").hidden = !text;
  });
};
let hide = 0;
const hideNews = () => inPlace(() => (at("news").hidden = true));
page.tell = (text, word = "", act = null) => {
  clearTimeout(hide);
  inPlace(() => {
    at("news-say").textContent = text;
    at("news").hidden = false;
    at("news-do").hidden = !act;
    at("news-do").textContent = word;
  });
  at("news-do").onclick = () => {
    hideNews();
    act();
  };
  hide = setTimeout(hideNews, 20_000);
};
at("news-close").addEventListener("click", hideNews);

// ---- the tabs
const tabs = ["wall", "pieces", "find"];
const choose = (chosen, focus = false) => {
  for (const name of tabs) {
    const tab = at(`tab-${name}`);
    tab.ariaSelected = String(name === chosen);
    tab.tabIndex = name === chosen ? 0 : -1;
    at(`panel-${name}`).hidden = name !== chosen;
    if (focus && name === chosen) tab.focus();
  }
  document.body.dataset.tab = chosen;
  dispatchEvent(new Event("resize")); // the map takes its size once it shows
};
const fromAddress = () => choose(tabs.find((name) => location.hash === `#${name}`) ?? "wall");
for (const name of tabs) {
  at(`tab-${name}`).addEventListener("click", () => {
    history.replaceState(null, "", name === "wall" ? location.pathname : `#${name}`);
    choose(name);
  });
  at(`tab-${name}`).addEventListener("keydown", (event) => {
    if (!["ArrowLeft", "ArrowRight"].includes(event.key)) return;
    event.preventDefault();
    const step = event.key === "ArrowRight" ? 1 : -1;
    const other = tabs[(tabs.indexOf(name) + step + tabs.length) % tabs.length];
    history.replaceState(null, "", other === "wall" ? location.pathname : `#${other}`);
    choose(other, true);
  });
}
addEventListener("hashchange", fromAddress);

// ---- all of it, without taking the focus or the place on the page away
const keeping = (show) => {
  const focused = document.activeElement && document.activeElement.dataset.key;
  const now = inPlace(show);
  if (!focused) return;
  const again = now.get(focused);
  const heading = { pieces: "missing-say", find: "found-say" }[document.body.dataset.tab] || "headline";
  (again || at(heading)).focus({ preventScroll: true });
};
let expires = 0;
page.show = (told, own = false) => {
  const before = page.wall;
  if (before && told.run === before.run && (told.number < before.number || (told.number === before.number && told.list < before.list))) return; // overtaken on its way
  if (told.code === undefined) told.code = before ? before.code : false;
  page.wall = told;
  const open = openSteps();
  keeping(() => {
    showWall();
    showPieces();
    showFound();
    at("last").textContent = told.began ? say("serve-last-photo", { time: time(told.at) }) : "";
    at("count-wall").textContent = open || "";
    at("count-pieces").textContent = told.missing.reduce((sum, group) => sum + group.pieces.length, 0) || "";
    at("add-helper").hidden = !told.code;
    document.title = `${open ? `(${open}) ` : ""}${document.title.replace(/^\(\d+\) /, "")}`;
  });
  // a step that another phone was on is free again when its time is over
  clearTimeout(expires);
  const ends = told.steps.map((step) => step.until).filter(Boolean);
  if (ends.length > 0) expires = setTimeout(() => page.load(), (Math.max(Math.min(...ends) - told.now, 0) + 1) * 1000);
  if (before && !own && told.began && told.run === before.run && told.number > before.number) {
    const left = new Set(told.steps.map((step) => step.key));
    const done = before.steps.filter((step) => !left.has(step.key)).length;
    page.tell(say("serve-new-photo", { time: time(told.at), done, left: told.steps.length }));
  }
};

// ---- live
page.load = async () => {
  try {
    const answer = await fetch("wall.json", { headers, cache: "no-store" });
    if (answer.status === 404) return page.lost(say("serve-link-old"));
    page.show(await answer.json());
    page.lost("");
  } catch {
    page.lost(say("serve-connection-lost"));
  }
};
const listen = () => {
  const live = new EventSource("live");
  let patience = 0;
  live.onmessage = (event) => {
    const known = page.wall && `${page.wall.number}.${page.wall.list}`;
    if (event.data !== known || !at("lost").hidden) page.load();
  };
  live.addEventListener("reading", (event) => {
    const [photo, percent] = event.data.split(" ").map(Number);
    if (page.reading) page.reading(photo, percent / 100);
  });
  live.onopen = () => clearTimeout(patience);
  live.onerror = () => {
    clearTimeout(patience);
    patience = setTimeout(page.load, 3000); // says what is the matter, or finds that all is well again
    if (live.readyState === EventSource.CLOSED) setTimeout(listen, 5000);
  };
};
document.addEventListener("visibilitychange", () => !document.hidden && page.load()); // a phone that comes back

// ---- undo, and the next helper
let asked = 0;
at("undo-photo").addEventListener("click", () => {
  asked = page.wall.number; // another photo that comes meanwhile is not undone
  at("undo-ask").textContent = say("serve-undo-ask", { time: time(page.wall.at) });
  at("undo").showModal();
  at("undo-no").focus();
});
at("undo-no").addEventListener("click", () => at("undo").close());
at("undo-yes").addEventListener("click", () => {
  at("undo").close();
  post("undo", { number: asked });
});
at("add-helper").addEventListener("click", () => {
  at("code-picture").src = "code.svg";
  at("code").showModal();
  at("code-heading").focus();
});
at("code-close").addEventListener("click", () => at("code").close());
for (const dialog of document.querySelectorAll("dialog")) {
  dialog.addEventListener("click", (event) => event.target === dialog && dialog.close());
}

fromAddress();
startPhotos();
page.load();
listen();
