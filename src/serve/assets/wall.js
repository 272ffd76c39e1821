// The wall: the marked photo, what is to be done, the map, a spot's sheet.
import { at, belongs, enlargeable, hangs, label, littleWall, make, page, picture, post, say, where, zoomable } from "./common.js";

const LEAST_PX = 28; // of a cell's side on the map: a finger finds it
const MOST_PX = 200;
const LETTER_PX = 8.5; // width of a letter on the map at the usual size of letters
const shownTimes = { 90: "↻", 180: "↻", 270: "↺" };

export const openSteps = () => page.wall.steps.filter((step) => step.state !== "done").length;
const sign = (text) => make("span", { className: "sign", "aria-hidden": "true" }, text);
const reach = (element) => {
  element.scrollIntoView({ block: "center" });
  element.classList.add("pointed");
  setTimeout(() => element.classList.remove("pointed"), 2500);
};

// ---- the marked photo
const photoName = (large) => `marked${large ? "-large" : ""}.jpg?${page.wall.run}-${page.wall.number}`;
const resizePhoto = enlargeable(at("photo"), at("photo-picture"), (size) => {
  if (size <= 1.3 || at("photo-picture").dataset.large === "yes") return;
  at("photo-picture").dataset.large = "yes";
  at("photo-picture").src = photoName(true);
});
const showPhoto = () => {
  at("photo-part").hidden = !page.wall.marked;
  const name = page.wall.marked ? photoName(false) : "";
  if (at("photo-picture").dataset.name === name) return;
  at("photo-picture").dataset.name = name;
  delete at("photo-picture").dataset.large;
  resizePhoto(1);
  at("photo-picture").style.aspectRatio = page.wall.marked ? page.wall.marked.join(" / ") : ""; // its place is kept while it comes
  if (name) at("photo-picture").src = name;
  else at("photo-picture").removeAttribute("src");
};

// ---- what is to be done
const pictures = (step) => {
  const row = make("div", { className: "pair" });
  const seen = (i) => picture(hangs(step.shows[i]), label(step.cells[i]));
  const [, second] = step.cells;
  if (step.do === "swap") row.append(seen(0), sign("⇄"), seen(1));
  else if (step.do === "round") {
    step.cells.forEach((_, i) => row.append(seen(i), sign(i + 1 < step.cells.length ? "→" : "↩")));
  } else if (step.do === "turn") {
    const after = seen(0);
    after.classList.add(`turn-${step.degrees}`);
    row.append(seen(0), sign(shownTimes[step.degrees] || "↻"), after);
  } else if (step.do === "move") row.append(seen(0), sign("→"), picture(belongs(second), label(second)));
  else if (step.do === "remove") row.append(seen(0), sign("✕"));
  else if (step.do === "find") row.append(...step.cells.slice(0, 3).map((place) => picture(belongs(place), label(place))));
  else row.append(...step.cells.slice(0, 3).map((_, i) => seen(i)));
  return row;
};
const put = (step, state) => post("step", { key: step.key, seen: step.seen, state });

// What a step can be made: done or not, mine or not.
const tick = (step, text = null) => {
  const box = make("input", { type: "checkbox", checked: step.state === "done" });
  box.dataset.key = `tick ${step.key}`;
  box.addEventListener("change", () => put(step, box.checked ? "done" : "open"));
  const name = text || make("span", { className: "unseen-text" }, `${step.say} ${say("serve-done")}`);
  return make("label", { className: "tick" }, box, name);
};
const mine = (step) => {
  if (step.state === "done") return "";
  if (step.state === "theirs") return make("p", { className: "by-another" }, say("serve-theirs"));
  const button = make("button", { type: "button", className: "mine", ariaPressed: String(step.state === "mine") }, say(step.state === "mine" ? "serve-mine-on" : "serve-mine"), make("span", { className: "unseen-text" }, `: ${step.say}`));
  button.dataset.key = `mine ${step.key}`;
  button.addEventListener("click", () => put(step, step.state === "mine" ? "open" : "mine"));
  return button;
};
const oneStep = (step, i) => {
  const spot = make("button", { type: "button", className: "spot-button" }, littleWall(step.cells, step.do), make("span", { className: "unseen-text" }, `${say("serve-show-spot")}: ${step.cells.map(label).join(", ")}`));
  spot.dataset.key = `spot ${step.key}`;
  spot.addEventListener("click", () => toMap(step));
  const named = step.cells.length > 2 ? 1 : 2; // of more than two the little wall tells
  const places = step.cells.slice(0, named).map((place) => make("p", { className: "where" }, make("b", {}, label(place)), ` ${where(place)}`));
  const before = step.after === null || page.wall.steps[step.after].state === "done" ? [] : [make("p", { className: "after" }, say("serve-after", { at: step.after + 1 }))];
  const item = make("li", { className: step.state }, tick(step), make("div", { className: "step" }, make("p", { className: "say" }, make("span", { className: "number" }, `${i + 1}. `), make("span", { className: "words" }, step.say)), ...before, ...places, make("div", { className: "row" }, spot, pictures(step), mine(step))));
  item.dataset.key = step.key;
  return item;
};
const showSteps = () => {
  const { steps } = page.wall;
  const old = new Map([...at("steps").children].map((item) => [item.dataset.key, item]));
  const items = steps.map((step, i) => {
    const told = JSON.stringify([step, i, page.wall.number, step.after === null ? "" : steps[step.after].state]);
    const same = old.get(step.key);
    if (same && same.dataset.told === told) return same; // what has not changed stays, and its pictures with it
    const item = oneStep(step, i);
    item.dataset.told = told;
    return item;
  });
  at("steps").replaceChildren(...items);
  at("steps-part").hidden = steps.length === 0;
  const all = steps.length > 0 && openSteps() === 0;
  at("all-ticked").textContent = all ? say("serve-step-all-ticked") : "";
  at("take").classList.toggle("call", all);
  at("take-words").textContent = all ? say("serve-check-again") : page.wall.began ? say("serve-again") : say("serve-take");
};
const showAnswer = () => {
  const wall = page.wall;
  at("headline").textContent = wall.headline;
  at("right").textContent = wall.began ? wall.right : "";
  at("forecast").textContent = wall.forecast || "";
  at("forecast").hidden = !wall.forecast;
  at("unkept").textContent = wall.unkept || "";
  at("unkept").hidden = !wall.unkept;
  at("undo-part").hidden = !wall.began;
  showPhoto();
  showSteps();
  at("advice").replaceChildren(...wall.advice.map((line) => make("li", {}, line)));
  at("advice-part").hidden = wall.advice.length === 0;
  at("advice-heading").hidden = !wall.began;
  const unsure = wall.began ? wall.cells.flatMap((cell, place) => (["unread", "unseen"].includes(cell.state) ? [place] : [])) : [];
  at("shaded").replaceChildren(...(unsure.length > 0 ? [littleWall([], "", unsure), make("p", { className: "quiet" }, say("serve-shaded"))] : []));
};

// ---- the map
const arrows = { 90: "→", 180: "↓", 270: "←" };
const mark = (cell) => {
  const found = cell.found === null ? "!" : label(cell.found);
  return { wrong: found, turned: arrows[cell.turn] || "↷", unread: "?" }[cell.state] || "";
};
let size = 0; // pixels of a cell's side
const sheet = document.querySelector(".sheet");
const scroll = at("map");
const letters = () => parseFloat(getComputedStyle(document.documentElement).fontSize) / 16;
const leastSize = () => Math.floor(Math.max(LEAST_PX, (scroll.clientWidth - (at("cells").querySelector("tbody th")?.offsetWidth || 0)) / page.wall.columns));
const resize = (wanted, x = scroll.clientWidth / 2, y = scroll.clientHeight / 2) => {
  if (scroll.clientWidth === 0) return; // the other tab shows
  const least = leastSize();
  const before = size || least;
  size = Math.floor(Math.min(Math.max(wanted, least), MOST_PX)); // whole pixels: the table and the picture round alike
  const box = { left: scroll.scrollLeft, top: scroll.scrollTop };
  sheet.style.setProperty("--cell", `${size}px`);
  // a label that has no room is a corner; it is never cut to the label of another spot
  for (const name of at("cells").querySelectorAll(".mark")) {
    name.classList.toggle("corner", (name.dataset.text.length * LETTER_PX + 8) * letters() + 2 > size);
  }
  scroll.scrollLeft = ((box.left + x) * size) / before - x;
  scroll.scrollTop = ((box.top + y) * size) / before - y;
  at("smaller").ariaDisabled = String(size <= least);
  at("larger").ariaDisabled = String(size >= MOST_PX);
};
const showMap = () => {
  const wall = page.wall;
  at("wall-part").hidden = !wall.began;
  if (!wall.began) return;
  sheet.style.setProperty("--columns", String(wall.columns));
  const across = [...Array(wall.columns).keys()];
  const head = make("tr", {}, make("td"), ...across.map((column) => make("th", { scope: "col" }, wall.letters[column])));
  const rows = [...Array(wall.rows).keys()].map((row) => {
    const cells = across.map((column) => {
      const place = row * wall.columns + column;
      const cell = wall.cells[place];
      const text = mark(cell);
      const name = make("span", { className: `mark ${cell.state}`, ariaHidden: "true" }, text);
      name.dataset.text = text;
      const button = make("button", { type: "button", className: cell.state, tabIndex: -1, ariaLabel: cell.say }, ...(text ? [name] : []));
      button.dataset.place = place;
      button.dataset.key = `cell ${place}`;
      return make("td", {}, button);
    });
    return make("tr", {}, make("th", { scope: "row" }, String(wall.numbers[row])), ...cells);
  });
  for (const state of ["reserve", "free"]) at(`legend-${state}`).hidden = !wall.cells.some((cell) => cell.state === state);
  at("cells").replaceChildren(make("thead", {}, head), make("tbody", {}, ...rows));
  const stop = Math.min(Number(at("cells").dataset.stop || 0), wall.cells.length - 1);
  at("cells").querySelector(`[data-place="${stop}"]`).tabIndex = 0;
  const src = `wall.jpg?${wall.run}-${wall.number}`;
  if (at("map-picture").getAttribute("src") !== src) at("map-picture").src = src;
  resize(size);
};
const goTo = (place) => {
  const cells = at("cells");
  cells.querySelectorAll("[tabindex='0']").forEach((button) => (button.tabIndex = -1));
  const button = cells.querySelector(`[data-place="${place}"]`);
  button.tabIndex = 0;
  cells.dataset.stop = place;
  button.focus({ preventScroll: true });
  button.scrollIntoView({ block: "nearest", inline: "nearest" });
  return button;
};
const toMap = (step) => {
  scroll.scrollIntoView({ block: "center" });
  step.cells.slice(1).forEach((place) => reach(at("cells").querySelector(`[data-place="${place}"]`)));
  reach(goTo(step.cells[0]));
};
at("cells").addEventListener("keydown", (event) => {
  const place = Number(event.target.dataset.place);
  if (Number.isNaN(place)) return;
  const { columns, cells } = page.wall;
  const column = place % columns;
  const step = {
    ArrowLeft: column > 0 ? -1 : 0,
    ArrowRight: column + 1 < columns ? 1 : 0,
    ArrowUp: place >= columns ? -columns : 0,
    ArrowDown: place + columns <= cells.length - 1 ? columns : 0,
    Home: -column,
    End: columns - 1 - column,
  }[event.key];
  if (step === undefined) return;
  event.preventDefault();
  goTo(place + step);
});

// ---- a spot's sheet
let shown = null; // the place whose sheet is open
const fillSheet = () => {
  const cell = page.wall.cells[shown];
  const step = page.wall.steps.find((one) => one.cells.includes(shown));
  const number = page.wall.steps.indexOf(step) + 1;
  at("cell-heading").textContent = cell.label;
  at("cell-where").textContent = where(shown);
  at("cell-say").textContent = step ? `${number}. ${step.say}` : cell.at ? cell.say : say("serve-cell-nothing-seen");
  const empty = ["empty", "unseen", "reserve", "free"].includes(cell.state);
  at("cell-hangs").closest("figure").hidden = empty;
  if (!empty) at("cell-hangs").src = hangs(shown);
  at("cell-hangs").alt = cell.say;
  at("cell-belongs").src = belongs(shown);
  at("cell-belongs").alt = `${say("serve-cell-belongs")}: ${cell.label}`;
  if (!step) return at("cell-step").replaceChildren();
  const list = make("button", { type: "button", className: "mine" }, say("serve-show-step"));
  list.addEventListener("click", () => {
    at("cell").close();
    const item = [...at("steps").children].find((one) => one.dataset.key === step.key);
    if (!item) return;
    reach(item);
    item.querySelector("input").focus({ preventScroll: true });
  });
  const mineButton = mine(step);
  const done = tick(step, make("span", {}, say("serve-done")));
  for (const own of [mineButton, done.querySelector("input")]) if (own.dataset) own.dataset.key = `sheet ${own.dataset.key}`;
  at("cell-step").replaceChildren(done, mineButton, list);
};
export const openSheet = (place) => {
  shown = place;
  fillSheet();
  at("cell").showModal();
  at("cell-heading").focus();
};
at("cells").addEventListener("click", (event) => {
  const button = event.target.closest("button");
  if (button) openSheet(Number(button.dataset.place));
});
at("cell-close").addEventListener("click", () => at("cell").close());
at("larger").addEventListener("click", () => resize(size * 1.4));
at("smaller").addEventListener("click", () => resize(size / 1.4));
const again = () => page.wall && page.wall.began && resize(size);
addEventListener("resize", again);
new ResizeObserver(again).observe(at("tab-wall")); // as large as the reader's letters
zoomable(scroll, () => size, resize);

export const showWall = () => {
  showAnswer();
  showMap();
  if (at("cell").open && page.wall.cells[shown]) fillSheet();
};
