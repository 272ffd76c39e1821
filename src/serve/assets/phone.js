"use strict";
// The helper's page: sends photos, shows the wall as it stands, keeps ticks on this phone.
(() => {
  const words = JSON.parse(document.getElementById("words").textContent);
  const say = (id) => words[id];
  const at = (id) => document.getElementById(id);
  const MOST_BYTES = Number(document.body.dataset.mostBytes);
  const TRIES = 30; // how often a photo is sent again while others come first
  const FEW = 24; // so many missing squares are shown without being asked for
  const NEXT = 6; // pieces to hand out at once, or half as many of each level
  const EVENING_S = 12 * 3600;
  const taken = new WeakSet(); // photos that the camera has just made
  let wall = null;

  // An element with properties and children. Text is always text: nothing from the laptop is read as HTML.
  const make = (tag, properties = {}, ...children) => {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(properties)) {
      if (name in element) element[name] = value;
      else element.setAttribute(name, value);
    }
    element.append(...children);
    return element;
  };

  // What this phone remembers. Private windows may refuse; then it is forgotten with the page.
  const memory = (name) => {
    let kept = {};
    try {
      kept = JSON.parse(localStorage.getItem(name)) || {};
    } catch {}
    const save = () => {
      try {
        localStorage.setItem(name, JSON.stringify(kept));
      } catch {}
    };
    return {
      has: (key) => kept[key] === 1,
      set: (key, on) => {
        if (on) kept[key] = 1;
        else delete kept[key];
        save();
      },
      only: (keys) => {
        const fresh = Object.fromEntries(keys.filter((key) => kept[key] === 1).map((key) => [key, 1]));
        if (Object.keys(fresh).length !== Object.keys(kept).length) {
          kept = fresh;
          save();
        }
      },
    };
  };
  const ticks = memory("everysquare-ticks");
  const given = memory("everysquare-given");

  // ---- pictures of cells and pieces
  const hangs = (place) => `cell/${place}?${wall.run}-${wall.number}`;
  const belongs = (place) => `piece/${place}`;
  const picture = (src, caption, alt = "") =>
    make("figure", {}, make("img", { src, alt, width: 240, height: 240 }), make("figcaption", {}, caption));
  const sign = (text) => make("span", { className: "sign", "aria-hidden": "true" }, text);
  const label = (place) => wall.cells[place].label;
  const turns = { 90: "↻", 180: "↻ 180°", 270: "↺" };
  const pictures = (step) => {
    const row = make("div", { className: "pair" });
    const seen = (place) => picture(hangs(place), label(place));
    const [first, second] = step.cells;
    if (step.do === "swap") row.append(seen(first), sign("⇄"), seen(second));
    else if (step.do === "turn") row.append(seen(first), sign(turns[step.degrees] || "↻"));
    else if (step.do === "move") row.append(seen(first), sign("→"), picture(belongs(second), label(second)));
    else if (step.do === "remove") row.append(seen(first), sign("✕"));
    else row.append(...step.cells.slice(0, 4).map(seen));
    return row;
  };

  // ---- the answer
  const showSteps = () => {
    const list = at("steps");
    const told = () => {
      const all = wall.steps.length > 0 && wall.steps.every((step) => ticks.has(step.key));
      at("all-ticked").textContent = all ? say("serve-step-all-ticked") : "";
    };
    const one = (step) => {
      const box = make("input", { type: "checkbox", checked: ticks.has(step.key) });
      const name = make("span", {}, make("span", { className: "unseen-text" }, `${step.say} `), say("serve-done"));
      const item = make("li", {}, make("p", { className: "say" }, make("span", {}, step.say)), make("div", { className: "row" }, pictures(step), make("label", { className: "tick" }, box, name)));
      item.classList.toggle("ticked", box.checked);
      box.dataset.key = step.key;
      box.addEventListener("change", () => {
        ticks.set(step.key, box.checked);
        item.classList.toggle("ticked", box.checked);
        told();
      });
      return item;
    };
    ticks.only(wall.steps.map((step) => step.key));
    list.replaceChildren(...wall.steps.map(one));
    at("steps-part").hidden = wall.steps.length === 0;
    told();
  };

  const showAnswer = () => {
    at("headline").textContent = wall.headline;
    at("right").textContent = wall.began ? wall.right : "";
    at("unkept").textContent = wall.unkept || "";
    at("unkept").hidden = !wall.unkept;
    const time = new Date(wall.at * 1000).toLocaleTimeString(document.documentElement.lang, { hour: "numeric", minute: "2-digit" });
    at("last").textContent = wall.began ? `${say("serve-last-photo")} ${time}` : "";
    at("take-words").textContent = wall.began ? say("serve-again") : say("serve-take");
    showSteps();
    at("advice").replaceChildren(...wall.advice.map((line) => make("li", {}, line)));
    at("advice-part").hidden = wall.advice.length === 0;
  };

  // ---- the wall
  const arrows = { 90: "→", 180: "↓", 270: "←" };
  const mark = (cell) => {
    const found = cell.found === null ? "!" : label(cell.found);
    return { right: "✓", wrong: found, turned: arrows[cell.turn] || "↷", unread: "?" }[cell.state] || "";
  };
  let size = 0; // pixels of a cell's side
  const sheet = document.querySelector(".sheet");
  const scroll = at("map");
  const resize = (wanted, x = scroll.clientWidth / 2, y = scroll.clientHeight / 2) => {
    const least = Math.max(28, (scroll.clientWidth - 32) / wall.columns);
    const before = size || least;
    size = Math.min(Math.max(wanted, least), 200);
    sheet.style.setProperty("--cell", `${size}px`);
    scroll.scrollLeft = ((scroll.scrollLeft + x) * size) / before - x;
    scroll.scrollTop = ((scroll.scrollTop + y) * size) / before - y;
  };
  const showWall = () => {
    at("wall-part").hidden = !wall.began;
    if (!wall.began) return;
    const letters = (column) => label(column).replace(/\d+$/, "");
    const digits = (row) => label(row * wall.columns).replace(/^\D+/, "");
    const across = [...Array(wall.columns).keys()];
    const head = make("tr", {}, make("td"), ...across.map((column) => make("th", { scope: "col" }, letters(column))));
    const rows = [...Array(wall.rows).keys()].map((row) => {
      const cells = across.map((column) => {
        const place = row * wall.columns + column;
        const cell = wall.cells[place];
        const button = make("button", { type: "button", className: cell.state, tabIndex: -1, ariaLabel: cell.say }, make("span", { className: `mark ${cell.state}`, ariaHidden: "true" }, mark(cell)));
        button.dataset.place = place;
        button.dataset.key = `cell ${place}`;
        return make("td", {}, button);
      });
      return make("tr", {}, make("th", { scope: "row" }, digits(row)), ...cells);
    });
    at("cells").replaceChildren(make("thead", {}, head), make("tbody", {}, ...rows));
    const stop = Math.min(Number(at("cells").dataset.stop || 0), wall.cells.length - 1);
    at("cells").querySelector(`[data-place="${stop}"]`).tabIndex = 0;
    at("map-picture").src = `wall.jpg?${wall.run}-${wall.number}`;
    resize(size);
  };
  const goTo = (place) => {
    const cells = at("cells");
    cells.querySelectorAll("[tabindex='0']").forEach((button) => (button.tabIndex = -1));
    const button = cells.querySelector(`[data-place="${place}"]`);
    button.tabIndex = 0;
    cells.dataset.stop = place;
    button.focus();
  };
  at("cells").addEventListener("keydown", (event) => {
    const place = Number(event.target.dataset.place);
    if (Number.isNaN(place)) return;
    const column = place % wall.columns;
    const last = wall.cells.length - 1;
    const step = {
      ArrowLeft: column > 0 ? -1 : 0,
      ArrowRight: column + 1 < wall.columns ? 1 : 0,
      ArrowUp: place >= wall.columns ? -wall.columns : 0,
      ArrowDown: place + wall.columns <= last ? wall.columns : 0,
      Home: -column,
      End: wall.columns - 1 - column,
    }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    goTo(place + step);
  });
  at("cells").addEventListener("click", (event) => {
    const button = event.target.closest("button");
    if (!button) return;
    const place = Number(button.dataset.place);
    const cell = wall.cells[place];
    at("cell-heading").textContent = cell.label;
    at("cell-say").textContent = cell.at ? cell.say : say("serve-cell-nothing-seen");
    at("cell-hangs").src = hangs(place);
    at("cell-hangs").alt = cell.say;
    at("cell-belongs").src = belongs(place);
    at("cell-belongs").alt = `${say("serve-cell-belongs")}: ${cell.label}`;
    at("cell-hangs").closest("figure").querySelector("figcaption").textContent = say("serve-cell-hangs");
    at("cell").showModal();
    at("cell-heading").focus();
  });
  at("cell-close").addEventListener("click", () => at("cell").close());
  at("cell").addEventListener("click", (event) => event.target === at("cell") && at("cell").close());
  at("larger").addEventListener("click", () => resize(size * 1.4));
  at("smaller").addEventListener("click", () => resize(size / 1.4));
  addEventListener("resize", () => wall && wall.began && resize(size));

  // Two fingers: the place between them stays where it is.
  const fingers = new Map();
  const spread = () => {
    const [a, b] = [...fingers.values()];
    const box = scroll.getBoundingClientRect();
    return { far: Math.hypot(a.x - b.x, a.y - b.y), x: (a.x + b.x) / 2 - box.left, y: (a.y + b.y) / 2 - box.top };
  };
  let pinch = null;
  scroll.addEventListener("pointerdown", (event) => {
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    pinch = fingers.size === 2 ? { far: spread().far, size } : null;
  });
  scroll.addEventListener("pointermove", (event) => {
    if (!fingers.has(event.pointerId)) return;
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (!pinch || fingers.size !== 2) return;
    const now = spread();
    resize((pinch.size * now.far) / pinch.far, now.x, now.y);
  });
  for (const end of ["pointerup", "pointercancel", "pointerleave"]) {
    scroll.addEventListener(end, (event) => {
      fingers.delete(event.pointerId);
      pinch = null;
    });
  }

  // ---- what is to come
  const handOut = (place, ...inside) => {
    const key = `${wall.tag} ${label(place)}`;
    const button = make("button", { type: "button", ariaPressed: String(given.has(key)) }, ...inside);
    button.dataset.key = `piece ${place}`;
    button.addEventListener("click", () => {
      given.set(key, !given.has(key));
      keepFocus(showMissing);
    });
    return make("li", {}, button);
  };
  const unfolded = new Map(); // what this helper has opened or closed
  const showMissing = () => {
    const all = wall.missing.flatMap((group) => group.pieces);
    const isGiven = (place) => given.has(`${wall.tag} ${label(place)}`);
    given.only(all.map((place) => `${wall.tag} ${label(place)}`));
    at("missing-part").hidden = all.length === 0;
    at("missing-say").textContent = wall.missing_say;
    const most = wall.missing.length > 1 ? NEXT / 2 : NEXT;
    const groups = wall.missing.map((group) => ({ ...group, next: group.pieces.filter((place) => !isGiven(place)).slice(0, most) }));
    const piece = (place) => handOut(place, make("img", { src: belongs(place), alt: "", width: 240, height: 240 }), label(place), make("span", { className: "unseen-text" }, ` ${say("serve-give-out")}`));
    const row = (group) => [...(group.level ? [make("h4", {}, group.level)] : []), make("ul", { className: "pieces" }, ...group.next.map(piece))];
    const waiting = groups.filter((group) => group.next.length > 0);
    at("next").replaceChildren(...waiting.flatMap(row));
    at("next-part").hidden = waiting.length === 0;
    const chip = (place) => handOut(place, label(place), make("span", { className: "unseen-text" }, ` ${isGiven(place) ? say("serve-given") : say("serve-give-out")}`));
    const list = (group) => {
      const summary = make("summary", {}, `${group.level || say("serve-all-missing")}: ${group.pieces.length}`);
      const details = make("details", { open: unfolded.get(group.level) ?? all.length <= FEW }, summary, make("ul", { className: "chips" }, ...group.pieces.map(chip)));
      summary.addEventListener("click", () => unfolded.set(group.level, !details.open));
      return details;
    };
    at("missing").replaceChildren(...groups.map(list));
  };

  // ---- all of it, without taking the focus away
  const keepFocus = (show) => {
    const key = document.activeElement && document.activeElement.dataset.key;
    show();
    const again = key && document.querySelector(`[data-key="${CSS.escape(key)}"]`);
    if (again) again.focus({ preventScroll: true });
    else if (key) at("headline").focus({ preventScroll: true });
  };
  const show = (told) => {
    if (wall && told.run === wall.run && told.number < wall.number) return; // overtaken on its way
    wall = told;
    keepFocus(() => {
      showAnswer();
      showWall();
      showMissing();
    });
  };

  // ---- live
  const lost = (text) => {
    at("lost").textContent = text;
    at("lost").hidden = !text;
  };
  const load = async () => {
    try {
      const answer = await fetch("wall.json", { cache: "no-store" });
      if (answer.status === 404) return lost(say("serve-link-old"));
      show(await answer.json());
      lost("");
    } catch {
      lost(say("serve-connection-lost"));
    }
  };
  const listen = () => {
    const live = new EventSource("live");
    let patience = 0;
    live.onmessage = () => load();
    live.onopen = () => clearTimeout(patience);
    live.onerror = () => {
      clearTimeout(patience);
      patience = setTimeout(load, 3000); // says what is the matter, or finds that all is well again
      if (live.readyState === EventSource.CLOSED) setTimeout(listen, 5000);
    };
  };

  // ---- photos
  const queue = [];
  let sending = false;
  const problem = (text, file = null) => {
    at("problem").textContent = text;
    at("retry").hidden = !file;
    at("retry").onclick = () => {
      problem("");
      add([file]);
    };
  };
  const work = (text, part = null) => {
    at("working").hidden = !text;
    if (at("status").textContent !== text) at("status").textContent = text;
    if (part === null) at("progress").removeAttribute("value");
    else at("progress").value = part;
  };
  const pause = (seconds) => new Promise((done) => setTimeout(done, seconds * 1000));
  // How many seconds ago a chosen photo was made, by this phone's own clock. What is not of this evening is no true time: some
  // phones say 1970.
  const age = (file) => {
    const seconds = Math.round((Date.now() - file.lastModified) / 1000);
    return !taken.has(file) && seconds > 0 && seconds < EVENING_S ? seconds : 0;
  };
  const post = (file) =>
    new Promise((done) => {
      const request = new XMLHttpRequest();
      request.open("POST", "photo");
      request.setRequestHeader("Content-Type", "application/octet-stream");
      request.setRequestHeader("X-Photo-Age", String(age(file)));
      const sendingWords = queue.length > 0 ? say("serve-sending-of") : say("serve-sending");
      let waits = 0;
      request.upload.onprogress = (event) => {
        clearTimeout(waits);
        work(sendingWords, event.total ? event.loaded / event.total : 0);
        waits = setTimeout(() => work(say("serve-queue")), 4000);
      };
      request.upload.onload = () => {
        clearTimeout(waits);
        work(say("serve-reading"));
      };
      request.onloadend = () => {
        clearTimeout(waits);
        done(request);
      };
      work(sendingWords, 0);
      request.send(file);
    });
  const told = (request) => {
    try {
      return JSON.parse(request.responseText);
    } catch {
      return {};
    }
  };
  const send = async (file) => {
    if (file.size > MOST_BYTES) return problem(say("serve-photo-too-heavy-here"));
    for (let tries = 0; tries < TRIES; tries += 1) {
      const request = await post(file);
      if (request.status === 503) {
        work(told(request).say || say("serve-queue"));
        await pause(Number(request.getResponseHeader("Retry-After")) || 5);
        continue;
      }
      if (request.status === 200) {
        lost("");
        const answer = told(request);
        show(answer);
        if (answer.note) problem(answer.note);
        at("headline").focus();
        at("headline").scrollIntoView({ block: "start" });
        return;
      }
      if (request.status === 404) return lost(say("serve-link-old"));
      return problem(told(request).say || say("serve-no-answer"), request.status === 422 ? null : file);
    }
    problem(say("serve-no-answer"), file);
  };
  const add = async (files) => {
    queue.push(...files);
    if (sending) return;
    sending = true;
    problem("");
    while (queue.length > 0) await send(queue.shift());
    sending = false;
    work("");
  };
  const open = (input) => {
    input.value = "";
    input.click();
  };
  for (const [button, input] of [["take", "camera"], ["choose", "gallery"]]) {
    at(button).addEventListener("click", () => open(at(input)));
    at(input).addEventListener("change", () => {
      const files = [...at(input).files];
      if (input === "camera") files.forEach((file) => taken.add(file));
      add(files);
    });
  }

  load();
  listen();
})();
