// The table: what to hand out next, what is being drawn and since when, what came back.
import { at, belongs, label, make, page, picture, post, say, time } from "./common.js";

const FEW = 24; // so many missing squares are shown without being asked for
const NEXT = 6; // pieces to hand out at once, or half as many of each level
const unfolded = new Map(); // what this helper has opened or closed

const put = (place, state) => post("piece", { place, state });
const handOut = async (place) => {
  if (await put(place, "out")) page.tell(say("serve-piece-out", { label: label(place) }), say("serve-undo"), () => put(place, "here"));
};
const bringBack = async (place) => {
  if (await put(place, "back")) page.tell(say("serve-piece-back", { label: label(place) }), say("serve-undo"), () => put(place, "out"));
};
const button = (key, act, ...inside) => {
  const one = make("button", { type: "button" }, ...inside);
  one.dataset.key = key;
  one.addEventListener("click", act);
  return one;
};
const hidden = (text) => make("span", { className: "unseen-text" }, ` ${text}`);

// One piece that is out, came back or fell: its picture, what is known of it, what can be done.
const row = (place, text, ...buttons) => {
  const item = make("li", {}, picture(belongs(place), ""), make("p", {}, make("strong", {}, label(place)), ` ${text}`), make("div", { className: "choices" }, ...buttons));
  item.dataset.key = `row ${place}`;
  item.append(prints(place));
  return item;
};
// What can be printed of a spot; it opens beside this page, for whichever printer this phone or laptop has.
const prints = (place) => {
  const key = `print ${place}`;
  const link = ({ kind, say: called }) => make("a", { href: `print/${place}/${kind}`, target: "_blank", rel: "noopener" }, called, hidden(label(place)));
  const summary = make("summary", {}, say("serve-print"), hidden(label(place)));
  const details = make("details", { className: "prints", open: unfolded.get(key) ?? false }, summary, make("ul", {}, ...page.wall.prints.map((one) => make("li", {}, link(one)))));
  summary.addEventListener("click", () => unfolded.set(key, !details.open));
  summary.dataset.key = key;
  return details;
};
const list = (id, items) => {
  at(`${id}-part`).hidden = items.length === 0;
  at(id).replaceChildren(...items);
};

export const showPieces = () => {
  const wall = page.wall;
  const all = wall.missing.flatMap((group) => group.pieces);
  const out = new Map(wall.out.map((piece) => [piece.place, piece]));
  const fallen = new Set(wall.fallen);
  const here = (place) => !out.has(place) && !fallen.has(place);
  at("missing-say").textContent = wall.missing_say;
  const most = wall.missing.length > 1 ? NEXT / 2 : NEXT;
  const groups = wall.missing.map((group) => ({ ...group, here: group.pieces.filter(here) })).filter((group) => group.here.length > 0);
  const next = (group) => [
    ...(group.level ? [make("h4", {}, `${group.level} `, make("span", { className: "count" }, String(group.here.length)))] : []),
    make("ul", { className: "pieces" }, ...group.here.slice(0, most).map((place) => make("li", {}, button(`piece ${place}`, () => handOut(place), make("img", { src: belongs(place), alt: "", width: 240, height: 240 }), label(place), hidden(say("serve-give-out")))))),
  ];
  at("next").replaceChildren(...groups.flatMap(next));
  at("next-part").hidden = all.length === 0;
  at("next-how").textContent = groups.length > 0 ? say("serve-next-how") : say("serve-next-none");

  const minutes = (since) => Math.max(0, Math.floor((wall.now - since) / 60));
  const drawn = wall.out.filter((piece) => piece.back === null).sort((a, b) => a.out - b.out);
  list("out", drawn.map(({ place, out: since }) => row(place, say("serve-out-since", { time: time(since), minutes: minutes(since) }), button(`back ${place}`, () => bringBack(place), say("serve-back"), hidden(label(place))), button(`here ${place}`, () => put(place, "here"), say("serve-undo"), hidden(label(place))))));
  const back = wall.out.filter((piece) => piece.back !== null).sort((a, b) => a.back - b.back);
  list("back", back.map(({ place, back: since }) => row(place, say("serve-back-since", { time: time(since) }), button(`not ${place}`, () => put(place, "out"), say("serve-not-back"), hidden(label(place))))));
  list("fallen", wall.fallen.map((place) => row(place, "")));

  const chip = (place) => {
    const given = !here(place);
    const one = button(`chip ${place}`, () => (given ? put(place, "here") : handOut(place)), label(place), hidden(say(given ? "serve-given" : "serve-give-out")));
    one.ariaPressed = String(given);
    one.disabled = fallen.has(place);
    return make("li", {}, one);
  };
  const whole = (group) => {
    const summary = make("summary", {}, `${group.level || say("serve-all-missing")}: ${group.pieces.length}`);
    const details = make("details", { open: unfolded.get(group.level) ?? all.length <= FEW }, summary, make("ul", { className: "chips" }, ...group.pieces.toSorted((a, b) => a - b).map(chip)));
    summary.addEventListener("click", () => unfolded.set(group.level, !details.open));
    return details;
  };
  at("missing").replaceChildren(...wall.missing.map(whole));
};
