// Squares that lie on a table or the floor: what this phone's photos showed, and what of it still waits to be hung.
import { at, belongs, enlargeable, label, make, page, say } from "./common.js";
import { openSheet } from "./wall.js";

let found = null; // what the laptop told last
page.table = { first: true, show: null };

const resize = enlargeable(at("found-photo"), at("found-picture"));

// ---- what lies there
const waiting = () => {
  const up = new Set(page.wall.cells.map((cell) => cell.found));
  return found.here.filter((place) => !up.has(place));
};
const piece = (place) => {
  const button = make("button", { type: "button" }, make("img", { src: belongs(place), alt: "", width: 240, height: 240 }), label(place), make("span", { className: "unseen-text" }, ` ${say("serve-show-where")}`));
  button.dataset.key = `found ${place}`;
  button.addEventListener("click", () => openSheet(place));
  return make("li", {}, button);
};
export const showFound = () => {
  for (const name of ["found-photo", "found-photos", "found-anew"]) at(name).hidden = !found;
  at("found-how").hidden = Boolean(found);
  const known = Boolean(found && page.wall && page.wall.began);
  const left = known ? waiting() : [];
  at("waiting-part").hidden = left.length === 0;
  at("none-waiting").hidden = !known || left.length > 0;
  at("found-say").textContent = found ? found.say : say("serve-find-start");
  at("found-lines").replaceChildren(...(found ? found.lines : []).map((line) => make("li", {}, line)));
  at("count-waiting").textContent = left.length || "";
  at("waiting").replaceChildren(...left.map(piece));
  if (!found) return at("found-picture").removeAttribute("src");
  at("found-photos").textContent = found.photos;
  const src = `table/${found.number}`;
  if (at("found-picture").getAttribute("src") === src) return;
  resize(1);
  at("found-picture").src = src;
};
page.table.show = (told) => {
  found = told;
  page.table.first = false;
  showFound();
  at("tab-find").click();
  at("found-say").focus({ preventScroll: true });
  scrollTo(0, 0);
};
at("found-anew").addEventListener("click", () => {
  found = null;
  page.table.first = true;
  showFound();
  at("found-say").focus({ preventScroll: true });
});
