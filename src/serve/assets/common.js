// What all parts of the helper's page use: words, elements, the wall as this phone knows it, messages to the laptop.
const words = JSON.parse(document.getElementById("words").textContent);
export const say = (id, values = {}) => words[id].replace(/\{(\w+)\}/g, (_, name) => String(values[name] ?? ""));
export const at = (id) => document.getElementById(id);

// The wall as it stands, and what the parts call in each other: show a wall, load it again, tell something above the page.
export const page = { wall: null, show: null, load: null, tell: null, lost: null };

// An element with properties and children. Text is always text: nothing from the laptop is read as HTML.
export const make = (tag, properties = {}, ...children) => {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (name in element) element[name] = value;
    else element.setAttribute(name, value);
  }
  element.append(...children);
  return element;
};
export const draw = (tag, attributes, ...children) => {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  element.append(...children);
  return element;
};

// A token drawn by lot, by which the laptop knows this phone's own marks. Private windows may refuse to keep it; then it goes with
// the page.
const who = (() => {
  const drawn = [...crypto.getRandomValues(new Uint8Array(12))].map((byte) => (byte % 36).toString(36)).join("");
  try {
    const kept = localStorage.getItem("everysquare-phone");
    if (/^[a-z0-9]{12}$/.test(kept || "")) return kept;
    localStorage.setItem("everysquare-phone", drawn);
  } catch {}
  return drawn;
})();
export const headers = { "X-Helper": who };

// Tells the laptop something small. What comes back is the wall as it stands then, or a sentence why not.
export const post = async (path, body) => {
  try {
    const answer = await fetch(path, { method: "POST", headers, body: JSON.stringify(body), cache: "no-store" });
    const told = await answer.json().catch(() => ({}));
    if (answer.ok) {
      page.show(told);
      return true;
    }
    page.tell(told.say || say("serve-not-sent"));
    page.load();
  } catch {
    page.tell(say("serve-not-sent"));
    page.load();
  }
  return false;
};

export const label = (place) => page.wall.cells[place].label;
export const hangs = (place) => `cell/${place}?${page.wall.run}-${page.wall.number}`;
export const belongs = (place) => `piece/${place}`;
export const where = (place) => `${page.wall.rows_say[Math.floor(place / page.wall.columns)]}, ${page.wall.columns_say[place % page.wall.columns]}`;
export const time = (seconds) => new Date(seconds * 1000).toLocaleTimeString(document.documentElement.lang, { hour: "numeric", minute: "2-digit" });
export const picture = (src, caption, alt = "") => make("figure", {}, make("img", { src, alt, width: 96, height: 96 }), make("figcaption", {}, caption));

// The wall in little: cells filled, arrows from each to the next. With `shade` what is not sure is shaded instead.
export const littleWall = (cells, way = "", shade = null) => {
  const { columns, rows } = page.wall;
  const across = columns * 10;
  const down = rows * 10;
  const line = Math.max(across, down) / 70; // one pixel where the longer side has 70
  const svg = draw("svg", { viewBox: `${-line} ${-line} ${across + 2 * line} ${down + 2 * line}`, "aria-hidden": "true", class: "little" });
  svg.append(draw("rect", { x: 0, y: 0, width: across, height: down, class: "wall", "stroke-width": line }));
  if (columns <= 24 && rows <= 24) {
    const lines = [...Array(columns - 1).keys()].map((i) => `M${(i + 1) * 10} 0V${down}`).concat([...Array(rows - 1).keys()].map((i) => `M0 ${(i + 1) * 10}H${across}`));
    svg.append(draw("path", { d: lines.join(""), class: "lines", "stroke-width": line / 2 }));
  }
  const middle = (place) => [(place % columns) * 10 + 5, Math.floor(place / columns) * 10 + 5];
  const least = Math.max(10, line * 7);
  const filled = (place, name, side) => {
    const [x, y] = middle(place);
    return draw("rect", { x: x - side / 2, y: y - side / 2, width: side, height: side, class: name });
  };
  if (shade) svg.append(...shade.map((place) => filled(place, "shade", 10)));
  svg.append(...cells.map((place, i) => filled(place, i === 0 ? "spot" : "spot other", least)));
  const arrow = (from, to) => {
    const [a, b] = [middle(from), middle(to)];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const [x, y] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    const head = line * 5;
    const end = [b[0] - (x * least) / 2, b[1] - (y * least) / 2];
    if (length < least + head) return [];
    const side = (sign) => `${end[0] - x * head - sign * y * head * 0.6} ${end[1] - y * head + sign * x * head * 0.6}`;
    return [
      draw("path", { d: `M${a[0] + (x * least) / 2} ${a[1] + (y * least) / 2}L${end[0] - x * head} ${end[1] - y * head}`, class: "way", "stroke-width": line * 1.6 }),
      draw("path", { d: `M${end.join(" ")}L${side(1)}L${side(-1)}z`, class: "head" }),
    ];
  };
  const pairs = { swap: [[0, 1], [1, 0]], move: [[0, 1]], round: cells.map((_, i) => [i, (i + 1) % cells.length]) }[way] || [];
  for (const [from, to] of pairs) svg.append(...arrow(cells[from], cells[to]));
  return svg;
};

// A picture in a scrolling box, as wide as the box or up to six times as wide: by two fingers, two taps, + and −. Gives what sets the
// size; `grown` is told how many times as wide it is now.
export const enlargeable = (box, image, grown = () => {}) => {
  let size = 1;
  const resize = (wanted, x = box.clientWidth / 2, y = box.clientHeight / 2) => {
    const before = size;
    size = Math.min(Math.max(wanted, 1), 6);
    const place = { left: box.scrollLeft, top: box.scrollTop };
    image.style.setProperty("width", `${size * 100}%`);
    box.scrollLeft = ((place.left + x) * size) / before - x;
    box.scrollTop = ((place.top + y) * size) / before - y;
    grown(size);
  };
  zoomable(box, () => size, resize);
  box.addEventListener("dblclick", () => resize(size > 1 ? 1 : 2.5));
  box.addEventListener("keydown", (event) => {
    const wanted = { "+": size * 1.4, "=": size * 1.4, "-": size / 1.4 }[event.key];
    if (wanted) resize(wanted);
  });
  return resize;
};

// Two fingers make what lies in a scrolling box larger; the place between them stays where it is. With one finger box and page scroll.
export const zoomable = (box, size, resize) => {
  const fingers = new Map();
  let pinch = null;
  const spread = () => {
    const [a, b] = [...fingers.values()];
    const outer = box.getBoundingClientRect();
    return { far: Math.hypot(a.x - b.x, a.y - b.y) || 1, x: (a.x + b.x) / 2 - outer.left, y: (a.y + b.y) / 2 - outer.top };
  };
  box.addEventListener("pointerdown", (event) => {
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    pinch = fingers.size === 2 ? { far: spread().far, size: size() } : null;
  });
  box.addEventListener("pointermove", (event) => {
    if (!fingers.has(event.pointerId)) return;
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (!pinch || fingers.size !== 2) return;
    const now = spread();
    resize((pinch.size * now.far) / pinch.far, now.x, now.y);
  });
  for (const end of ["pointerup", "pointercancel", "pointerleave"]) {
    box.addEventListener(end, (event) => {
      fingers.delete(event.pointerId);
      pinch = null;
    });
  }
};
