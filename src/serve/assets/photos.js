// Photos on their way: one after the other, each with its picture, how far it is, and what became of it.
import { at, headers, make, page, say } from "./common.js";

const MOST_BYTES = Number(document.body.dataset.mostBytes);
const TRIES = 30; // how often a photo is sent again while others come first
const EVENING_S = 12 * 3600;
const GOOD = [60]; // shivers in ms, where a phone can
const BAD = [60, 90, 60];
const made = new WeakMap(); // when the camera made a photo
const ofTable = new WeakSet(); // photos of squares that lie somewhere
const queue = [];
let sending = false;
let count = { at: 0, of: 0 };
let request = null;
let canceled = false;

const shiver = (pattern) => navigator.vibrate && navigator.vibrate(pattern);
const view = (file, image) => {
  const address = URL.createObjectURL(file);
  image.hidden = false;
  image.onload = image.onerror = (event) => {
    image.hidden = event.type === "error"; // a kind of picture that this browser does not show
    URL.revokeObjectURL(address);
  };
  image.src = address;
};

// What became of a photo that gave no answer; each keeps its own line until it is put away or sent again.
const problem = (text, file, again = false) => {
  const image = make("img", { alt: "", hidden: true });
  view(file, image);
  const button = (word, act) => {
    const one = make("button", { type: "button" }, say(word));
    one.addEventListener("click", () => {
      item.remove();
      act();
    });
    return one;
  };
  const item = make("li", {}, image, make("p", {}, text), make("div", { className: "choices" }, ...(again ? [button("serve-retry", () => add([file]))] : []), button("serve-dismiss", () => {})));
  if (again) item.querySelector("button").classList.add("retry");
  at("problem").append(item);
  shiver(BAD);
};
const work = (text, part = null, can = false) => {
  at("working").hidden = !text;
  at("cancel").hidden = !can;
  if (at("status").textContent !== text) at("status").textContent = text;
  if (part === null) at("progress").removeAttribute("value");
  else at("progress").value = part;
};
const several = (one, many) => (count.of > 1 ? say(many, count) : say(one));
const pause = (seconds) => new Promise((done) => setTimeout(done, seconds * 1000));
// How many seconds ago a photo was made, by this phone's own clock. What is not of this evening is no true time: some phones say 1970.
const age = (file) => {
  const seconds = Math.round((Date.now() - (made.get(file) ?? file.lastModified)) / 1000);
  return seconds > 0 && seconds < EVENING_S ? seconds : 0;
};
const post = (file) =>
  new Promise((done) => {
    request = new XMLHttpRequest();
    const table = ofTable.has(file);
    request.open("POST", table ? "table" : "photo");
    if (table && page.table.first) request.setRequestHeader("X-Table", "first");
    request.setRequestHeader("Content-Type", "application/octet-stream");
    request.setRequestHeader("X-Photo-Age", String(age(file)));
    request.setRequestHeader("X-Helper", headers["X-Helper"]);
    const id = crypto.getRandomValues(new Uint32Array(1))[0];
    request.setRequestHeader("X-Photo", String(id));
    const words = several("serve-sending", "serve-sending-of");
    let waits = 0;
    request.upload.onprogress = (event) => {
      clearTimeout(waits);
      work(words, event.total ? event.loaded / event.total : 0, true);
      waits = setTimeout(() => work(say("serve-queue"), null, true), 4000);
    };
    request.upload.onload = () => {
      clearTimeout(waits);
      work(several(table ? "serve-find-reading" : "serve-reading", "serve-reading-of"));
      page.reading = (photo, part) => photo === id && work(several("serve-reading", "serve-reading-of"), part);
    };
    request.onloadend = () => {
      clearTimeout(waits);
      page.reading = null;
      done(request);
    };
    work(words, 0, true);
    request.send(file);
  });
const told = (answer) => {
  try {
    return JSON.parse(answer.responseText);
  } catch {
    return {};
  }
};
const send = async (file) => {
  if (file.size > MOST_BYTES) return problem(say("serve-photo-too-heavy-here"), file);
  view(file, at("thumbnail"));
  canceled = false;
  for (let tries = 0; tries < TRIES && !canceled; tries += 1) {
    const answer = await post(file);
    if (canceled) return;
    if (answer.status === 503) {
      work(told(answer).say || say("serve-queue"), null, true);
      await pause(Number(answer.getResponseHeader("Retry-After")) || 5);
      continue;
    }
    if (answer.status === 200) {
      page.lost("");
      if (ofTable.has(file)) {
        shiver(GOOD);
        return page.table.show(told(answer));
      }
      const wall = told(answer);
      page.show(wall, true);
      if (wall.note) problem(wall.note, file);
      else shiver(GOOD);
      if (queue.length === 0) {
        at("tab-wall").click();
        at("headline").focus({ preventScroll: true });
        scrollTo(0, 0);
      }
      return;
    }
    if (answer.status === 404) return page.lost(say("serve-link-old"));
    return problem(told(answer).say || say("serve-no-answer"), file, answer.status !== 422);
  }
  if (!canceled) problem(say("serve-no-answer"), file, true);
};
const add = async (files) => {
  queue.push(...files);
  count.of += files.length;
  if (sending) return;
  sending = true;
  while (queue.length > 0) {
    count.at += 1;
    await send(queue.shift());
  }
  sending = false;
  count = { at: 0, of: 0 };
  work("");
  at("thumbnail").removeAttribute("src");
};
const open = (input) => {
  input.value = "";
  input.click();
};

export const startPhotos = () => {
  for (const [button, input] of [["take", "camera"], ["choose", "gallery"]]) {
    at(button).addEventListener("click", () => open(at(input)));
    at(input).addEventListener("change", () => {
      const files = [...at(input).files];
      if (input === "camera") files.forEach((file) => made.set(file, Date.now()));
      if (document.body.dataset.tab === "find") files.forEach((file) => ofTable.add(file));
      if (!sending) at("problem").replaceChildren();
      add(files);
    });
  }
  at("cancel").addEventListener("click", () => {
    canceled = true;
    queue.length = 0;
    if (request) request.abort();
    at("take").focus();
  });
};
