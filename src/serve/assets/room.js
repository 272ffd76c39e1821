"use strict";
// The room's page: the mural grows by itself. Covered until somebody shows the picture.
(() => {
  const words = JSON.parse(document.getElementById("words").textContent);
  const say = (id) => words[id];
  const at = (id) => document.getElementById(id);
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  const COUNT_FROM = 3; // seconds between the second thought and the picture
  let wall = null;
  let hung = null; // what hung when the page was last drawn; null before the first time
  let shown = false;
  let revealing = 0; // the timer of the countdown
  let beside = false;
  let awake = null; // keeps the laptop's screen on where the browser can

  // The same number for the same spot on every page, spread as by lot: it tells nothing of the picture.
  const lot = (place) => {
    let mixed = (place + 1) * 2654435761;
    mixed ^= mixed >>> 15;
    return Math.imul(mixed, 2246822519) >>> 8;
  };

  // ---- the wall

  const fill = () => {
    const cover = at("cover");
    if (cover.childElementCount !== wall.hangs.length) {
      cover.replaceChildren(...wall.hangs.map((_, place) => {
        const cell = document.createElement("i");
        cell.style.setProperty("--colour", wall.colours[lot(place) % Math.max(1, wall.colours.length)] ?? "var(--act)");
        cell.style.setProperty("--wait", `${lot(place) % 1000}ms`);
        return cell;
      }));
    }
    wall.hangs.forEach((hangs, place) => {
      const { classList } = cover.children[place];
      classList.toggle("hangs", Boolean(hangs));
      classList.toggle("reserve", wall.reserve.includes(place));
      classList.toggle("came", Boolean(hung) && Boolean(hangs) && !hung[place]);
    });
    hung = wall.hangs;
  };

  const show = () => {
    document.body.style.setProperty("--across", wall.columns);
    document.body.style.setProperty("--down", wall.rows);
    fill();
    at("cover").classList.toggle("off", shown);
    at("cover").ariaHidden = String(shown);
    at("picture").hidden = !shown;
    if (shown) at("picture").src = `wall.jpg?${wall.run}-${wall.number}`;
    else at("picture").removeAttribute("src");
    at("reveal").hidden = shown || revealing !== 0;
    at("hide").hidden = !shown;
    at("beside").hidden = !shown;
    at("beside").ariaPressed = String(beside);
    const both = shown && beside;
    document.body.classList.toggle("both", both);
    at("original").hidden = !both;
    document.querySelector("#mural figcaption").hidden = !both;
    if (both) at("original-picture").src = `picture.jpg?${wall.run}`;
    else at("original-picture").removeAttribute("src");
    at("show-code").hidden = !wall.code;
    at("count").textContent = wall.count;
    at("of").textContent = wall.say_of;
    at("hang").textContent = wall.say_hang;
    at("to-come").textContent = wall.complete ? "" : wall.say_to_come;
    at("complete").textContent = wall.complete ? say("serve-room-complete") : "";
    at("next").textContent = wall.complete ? (shown ? say("serve-room-next-keep") : say("serve-room-next-show")) : "";
  };

  // ---- showing the picture is a moment: a second thought, a countdown, then the squares fall away

  const reveal = () => {
    let left = COUNT_FROM;
    const count = () => {
      if (left === 0) {
        clearInterval(revealing);
        revealing = 0;
        at("countdown").hidden = true;
        shown = true;
        beside = wall.complete;
        show();
        at("hide").focus();
        return;
      }
      at("countdown").textContent = left;
      left -= 1;
    };
    at("countdown").hidden = false;
    revealing = setInterval(count, 1000);
    count();
    show();
  };
  at("reveal").addEventListener("click", () => wall && at("ask").showModal());
  at("ask-no").addEventListener("click", () => at("ask").close());
  at("ask-yes").addEventListener("click", () => {
    at("ask").close();
    if (!shown && revealing === 0) reveal();
  });
  at("hide").addEventListener("click", () => {
    shown = false;
    beside = false;
    show();
    at("reveal").focus();
  });
  at("beside").addEventListener("click", () => {
    beside = !beside;
    show();
  });

  // ---- the laptop

  const stay = async () => {
    if (document.visibilityState !== "visible" || awake || !navigator.wakeLock) return;
    try {
      awake = await navigator.wakeLock.request("screen");
      awake.addEventListener("release", () => (awake = null));
    } catch {
      awake = null; // the battery is low, or the browser does not let pages do this
    }
  };
  document.addEventListener("visibilitychange", stay);
  at("full").hidden = !document.fullscreenEnabled;
  at("full").addEventListener("click", () => {
    if (document.fullscreenElement) document.exitFullscreen();
    else document.documentElement.requestFullscreen().catch(() => (at("full").hidden = true));
  });
  document.addEventListener("fullscreenchange", () => {
    at("full").textContent = document.fullscreenElement ? say("serve-room-full-end") : say("serve-room-full");
  });

  at("show-code").addEventListener("click", () => {
    at("code-picture").src = "code.svg";
    at("code").showModal();
  });
  at("code-close").addEventListener("click", () => at("code").close());

  // ---- news

  // What is on the page is old: it says so, and since when.
  const old = (why) => {
    document.body.classList.add("old");
    const time = wall && new Date(wall.at * 1000).toLocaleTimeString(document.documentElement.lang, { timeStyle: "short" });
    at("lost").textContent = time ? `${why} ${say("serve-room-since")} ${time}.` : why;
    at("lost").hidden = false;
  };
  const load = async () => {
    try {
      const answer = await fetch("wall.json", { cache: "no-store" });
      if (answer.status === 404) {
        old(say("serve-link-old"));
        return;
      }
      wall = await answer.json();
      show();
      document.body.classList.remove("old");
      at("lost").hidden = true;
    } catch {
      old(say("serve-room-lost"));
    }
  };
  const listen = () => {
    const live = new EventSource("live");
    let patience = 0;
    live.onmessage = load;
    live.onopen = () => clearTimeout(patience);
    live.onerror = () => {
      clearTimeout(patience);
      patience = setTimeout(load, 3000);
      if (live.readyState === EventSource.CLOSED) setTimeout(listen, 5000);
    };
  };
  // Squares that came settle where motion is not wanted, too: the mark goes after the next drawing.
  still.addEventListener("change", () => wall && show());

  stay();
  load();
  listen();
})();
