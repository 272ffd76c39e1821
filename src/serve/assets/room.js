"use strict";
// The room's page: the wall grows by itself. Covered until somebody lifts the cover.
(() => {
  const words = JSON.parse(document.getElementById("words").textContent);
  const say = (id) => words[id];
  const at = (id) => document.getElementById(id);
  let wall = null;

  const show = () => {
    const covered = at("secret").ariaChecked === "true";
    at("stage").style.setProperty("--across", wall.columns);
    at("stage").style.setProperty("--down", wall.rows);
    const cells = wall.hangs.map((hangs) => {
      const cell = document.createElement("i");
      cell.className = hangs ? "hangs" : "";
      return cell;
    });
    at("cover").replaceChildren(...cells);
    at("cover").hidden = !covered;
    at("picture").hidden = covered;
    if (covered) at("picture").removeAttribute("src");
    else at("picture").src = `wall.jpg?${wall.run}-${wall.number}`;
    at("show-code").hidden = !wall.code;
    at("hang").textContent = wall.say_hang;
    at("to-come").textContent = wall.complete ? "" : wall.say_to_come;
    at("complete").textContent = wall.complete ? say("serve-room-complete") : "";
  };
  const load = async () => {
    try {
      const answer = await fetch("wall.json", { cache: "no-store" });
      if (answer.status === 404) {
        at("lost").textContent = say("serve-link-old");
        return;
      }
      wall = await answer.json();
      show();
      at("lost").textContent = "";
    } catch {
      at("lost").textContent = say("serve-room-lost");
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
  at("secret").addEventListener("click", () => {
    at("secret").ariaChecked = String(at("secret").ariaChecked !== "true");
    if (wall) show();
  });
  at("show-code").addEventListener("click", () => {
    at("code-picture").src = "code.svg";
    at("code").showModal();
    at("show-code").ariaExpanded = "true";
  });
  at("code-close").addEventListener("click", () => at("code").close());
  at("code").addEventListener("close", () => (at("show-code").ariaExpanded = "false"));

  load();
  listen();
})();
