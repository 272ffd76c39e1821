// Faults that the helper's page once had, each looked for in Chromium, so that none of them comes back.
import { utimesSync } from "node:fs";

// A wall of any size as the laptop would tell it, for what only the page does with it.
const letters = (column) => (column < 26 ? "" : String.fromCharCode(64 + Math.floor(column / 26))) + String.fromCharCode(65 + (column % 26));
const told = (columns, rows) => {
  const name = (place) => `${letters(place % columns)}${rows - Math.floor(place / columns)}`;
  const last = columns * rows - 1;
  const cells = [...Array(columns * rows).keys()].map((place) => {
    const wrong = place % 5 === 1;
    return { label: name(place), state: wrong ? "wrong" : "right", found: wrong ? last - place : place, turn: 0, say: `${name(place)}: right`, at: 1_800_000_000 };
  });
  const steps = [{ key: "swap", seen: 1, do: "swap", say: "Swap.", cells: [1, last - 1], shows: [1, last - 1], square: null, degrees: null, after: null, state: "open", until: null }];
  return {
    run: 1, number: 1, list: 0, check: "x", at: 1_800_000_000, now: 1_800_000_000, tag: "K7M", columns, rows, began: true, marked: false, headline: "1 thing to fix", right: "", steps, advice: [], unkept: null, cells,
    missing: [], missing_say: "", fallen: [], out: [], rows_say: Array(rows).fill("row"), columns_say: Array(columns).fill("column"),
    letters: [...Array(columns).keys()].map(letters), numbers: [...Array(rows).keys()].map((row) => rows - row),
  };
};
const PIXEL = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="60" height="40"><path fill="#987" d="M0 0h60v40H0z"/></svg>');
const mocked = async (page, link, columns, rows) => {
  await page.route("**/wall.json", (route) => route.fulfill({ json: told(columns, rows) }));
  await page.route("**/*.jpg*", (route) => route.fulfill({ contentType: "image/svg+xml", body: PIXEL }));
  await page.route("**/live", (route) => route.abort());
  await page.goto(link);
  await page.waitForSelector("#cells td button");
};
const LARGE = { viewport: { width: 390, height: 844 } };

// The largest distance in pixels between a cell's corners and its part of the picture behind.
const shift = (page, columns, rows) =>
  page.evaluate(([columns, rows]) => {
    const picture = document.getElementById("map-picture").getBoundingClientRect();
    const cells = [...document.querySelectorAll("#cells td button")];
    let most = 0;
    for (const place of [0, columns - 1, Math.floor((columns * rows) / 2), columns * rows - 1]) {
      const box = cells[place].parentElement.getBoundingClientRect();
      const [column, row] = [place % columns, Math.floor(place / columns)];
      const x = picture.left + (picture.width * column) / columns;
      const y = picture.top + (picture.height * row) / rows;
      most = Math.max(most, Math.abs(box.left - x), Math.abs(box.top - y), Math.abs(box.right - x - picture.width / columns), Math.abs(box.bottom - y - picture.height / rows));
    }
    return most;
  }, [columns, rows]);
const cut = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("#cells .mark")]
      .filter((mark) => mark.textContent !== "" && parseFloat(getComputedStyle(mark).fontSize) > 4)
      .filter((mark) => {
        const range = document.createRange();
        range.selectNodeContents(mark);
        const [text, cell] = [range.getBoundingClientRect(), mark.closest("td").getBoundingClientRect()];
        return text.left < cell.left - 1 || text.right > cell.right + 1 || mark.scrollWidth > mark.clientWidth + 1;
      })
      .map((mark) => mark.textContent),
  );

const map = async ({ check, phone, links, wait }) => {
  for (const [columns, rows] of [[4, 3], [10, 8], [20, 16], [60, 50]]) {
    for (const size of [LARGE, { viewport: { width: 1280, height: 900 }, isMobile: false }, { ...LARGE, letters: "200%" }]) {
      const page = await phone(size);
      await mocked(page, links.helpers, columns, rows);
      if (size.letters) await page.evaluate((size) => (document.documentElement.style.fontSize = size), size.letters);
      await wait(100);
      const shifts = [];
      const names = new Set();
      for (let zoom = 0; zoom < 7; zoom += 1) {
        shifts.push(await shift(page, columns, rows));
        (await cut(page)).forEach((name) => names.add(name));
        await page.evaluate(() => document.getElementById("larger").click());
        await wait(30);
      }
      const what = `${columns} × ${rows}, ${size.viewport.width} px${size.letters ? ", large letters" : ""}`;
      check(`map: each spot shows its own piece of the wall at every zoom: ${what}`, Math.max(...shifts) <= 1, shifts.map((one) => one.toFixed(1)).join(" "));
      check(`map: no label is cut: ${what}`, names.size === 0, [...names].slice(0, 5));
      await page.context().close();
    }
  }
  const page = await phone(LARGE);
  await mocked(page, links.helpers, 20, 16);
  for (const letters of ["100%", "200%"]) {
    await page.evaluate((size) => (document.documentElement.style.fontSize = size), letters);
    const covered = await page.evaluate(async () => {
      let covered = 0;
      for (let y = 0; y < document.documentElement.scrollHeight; y += 40) {
        scrollTo(0, y);
        const box = document.getElementById("take").getBoundingClientRect();
        for (const part of [0.1, 0.5, 0.9]) {
          const top = document.elementFromPoint(box.left + box.width * part, box.top + box.height / 2);
          if (!top || !top.closest("#take")) covered += 1;
        }
      }
      return covered;
    });
    check(`map: the button to photograph is free at every place of the page, letters of ${letters}`, covered === 0, `${covered} covered`);
  }
  await page.evaluate(() => (document.documentElement.style.fontSize = ""));
  await page.unroute("**/wall.json");
  await page.route("**/wall.json", (route) => route.fulfill({ json: told(10, 8) }));
  await page.reload();
  await page.waitForSelector("#cells td button");
  await page.evaluate(() => {
    document.querySelector("main").style.paddingBottom = "1500px";
    scrollTo(0, document.getElementById("map").getBoundingClientRect().top - 200);
  });
  const before = await page.evaluate(() => scrollY);
  const box = await page.locator("#map").boundingBox();
  const debug = await page.context().newCDPSession(page);
  const finger = (type, y) => debug.send("Input.dispatchTouchEvent", { type, touchPoints: y === null ? [] : [{ x: box.x + box.width / 2, y }] });
  await finger("touchStart", box.y + 220);
  for (let step = 1; step <= 10; step += 1) {
    await finger("touchMove", box.y + 220 - step * 20);
    await wait(20);
  }
  await finger("touchEnd", null);
  await wait(500);
  const moved = (await page.evaluate(() => scrollY)) - before;
  check("map: a swipe that begins on it moves the page", moved > 100, `${moved} px`);
  await page.context().close();
};

// Cells of a known square in whose picture most is the grey stripes of a place that no photo shows.
const striped = (page) =>
  page.evaluate(async () => {
    const wall = await (await fetch("wall.json")).json();
    const image = new Image();
    image.src = `wall.jpg?${Math.random()}`;
    await image.decode();
    const canvas = Object.assign(document.createElement("canvas"), { width: image.naturalWidth, height: image.naturalHeight });
    const context = canvas.getContext("2d");
    context.drawImage(image, 0, 0);
    const [wide, high] = [canvas.width / wall.columns, canvas.height / wall.rows];
    return wall.cells.flatMap((cell, place) => {
      if (!["right", "wrong", "turned", "empty"].includes(cell.state)) return [];
      const [x, y] = [(place % wall.columns) * wide, Math.floor(place / wall.columns) * high];
      const { data } = context.getImageData(Math.round(x), Math.round(y), Math.floor(wide), Math.floor(high));
      let nowhere = 0;
      for (let at = 0; at < data.length; at += 4) {
        const [r, g, b] = data.subarray(at, at + 3);
        if (Math.abs(r - g) < 3 && Math.abs(g - b) < 3 && (Math.abs(r - 222) < 5 || Math.abs(r - 238) < 5 || Math.abs(r - 230) < 3)) nowhere += 1;
      }
      return nowhere > data.length / 16 ? [cell.label] : [];
    });
  });

const broken = (page, id) =>
  page.evaluate((id) => {
    const text = document.getElementById(id).firstChild;
    const words = [...text.textContent.matchAll(/\S+/g)];
    return words.filter((word) => {
      const range = document.createRange();
      range.setStart(text, word.index);
      range.setEnd(text, word.index + word[0].length);
      return new Set([...range.getClientRects()].map((box) => Math.round(box.top))).size > 1;
    }).map((word) => word[0]);
  }, id);

export const past = async (world) => {
  const { check, phone, made, links, wait, stop, letter, cutPhoto } = world;
  await map(world);
  const send = async (page, files, input = "#gallery") => {
    const number = () => page.evaluate(async () => (await (await fetch("wall.json")).json()).number);
    const before = await number();
    for (const file of [files].flat()) utimesSync(file, new Date(), new Date());
    await page.setInputFiles(input, files);
    for (let tries = 0; (await number()) === before || !(await page.locator("#working").isHidden()); tries += 1) {
      if (tries > 200) throw new Error("a photo is not answered");
      await wait(300);
    }
    await wait(500);
  };

  const bare = await phone();
  const opened = await bare.goto(links.helpers.replace(/\/$/, "")).catch(() => null);
  check("a link without its last slash opens the page", opened !== null && opened.status() === 200 && (await bare.locator("#take").isVisible()));
  for (const viewport of [{ width: 320, height: 640 }, LARGE.viewport]) {
    const narrow = await phone({ viewport });
    await narrow.goto(links.helpers);
    await wait(500);
    check(`no word of the button is broken at ${viewport.width} px`, (await broken(narrow, "take-words")).length === 0, await broken(narrow, "take-words"));
    await narrow.context().close();
  }
  await bare.context().close();

  const page = await phone(LARGE);
  const two = await phone(LARGE);
  await page.goto(links.helpers);
  await two.goto(links.helpers);
  await page.waitForFunction(() => document.getElementById("headline").textContent.trim() !== "");

  const small = made(41, { swaps: 1, width: 500, height: 375 });
  await page.setInputFiles("#gallery", small);
  await page.waitForFunction(() => document.getElementById("problem").textContent !== "", null, { timeout: 60_000 });
  const copy = await page.locator("#problem").innerText();
  check(`a small copy from a messenger is told to be one: ${copy.split("\n")[0]}`, /original/i.test(copy), copy);

  const statuses = new Set();
  await page.exposeFunction("seen", (text) => statuses.add(text));
  await page.evaluate(() => new MutationObserver(() => window.seen(document.getElementById("status").textContent)).observe(document.getElementById("status"), { childList: true, characterData: true, subtree: true }));
  const complete = made(42, { misdrawn: 1 });
  await send(page, [letter, cutPhoto, complete]);
  const problems = await page.locator("#problem").innerText();
  check("of several photos each keeps its own reason", /read this file|can be read/i.test(problems) && /cut off/i.test(problems), problems);
  check("and it is said which of them is sent", [...statuses].some((text) => /2 of 3/.test(text)), [...statuses].join("; "));

  const up = made(43, { missing: 2 });
  await send(page, up);
  const list = await page.locator("#steps").innerText();
  check("squares that fell off are to be found", (list.match(/\d\. Find square \w+\. It was up before/g) || []).length === 2, list);

  const before = await striped(page);
  const part = made(44, { fill: 1.6, yaw: 12, misdrawn: 1 });
  await send(page, part);
  check("the part leaves what it does not show as it was", (await page.locator("#cells button.unseen").count()) === 0);
  const nowhere = (await striped(page)).filter((name) => !before.includes(name));
  check("a photo of a part wipes no picture", nowhere.length === 0, nowhere);

  const round = made(45, { cycles: 1 });
  await send(page, round);
  const steps = await page.locator("#steps > li").evaluateAll((items) => items.map((item) => ({ say: (item.querySelector(".say .words") || item).textContent, pictures: item.querySelectorAll(".pair img").length })));
  const labels = steps.length === 1 ? steps[0].say.match(/[A-J]\d → /g) : null;
  check("three squares that move round are one card with three pictures and arrows", steps.length === 1 && steps[0].pictures === 3 && labels && labels.length === 3, JSON.stringify(steps));
  await send(page, made(46, { "permute-all": true }));
  const truth = await page.evaluate(async () => {
    const wall = await (await fetch("wall.json")).json();
    const found = wall.cells.map((cell) => cell.found);
    const shown = [...document.querySelectorAll("#steps > li")].map((item) => [...item.querySelectorAll(".pair img")].map((image) => image.getAttribute("src")));
    const wrong = [];
    const hangs = found.map((_, place) => place);
    wall.steps.forEach((step, i) => {
      step.cells.forEach((place, at) => {
        if (shown[i][at] && shown[i][at].startsWith("cell/") && !shown[i][at].startsWith(`cell/${hangs[place]}?`)) wrong.push(step.say);
      });
      if (step.do === "swap") [hangs[step.cells[0]], hangs[step.cells[1]]] = [hangs[step.cells[1]], hangs[step.cells[0]]];
      if (step.do === "round") {
        const before = step.cells.map((place) => hangs[place]);
        step.cells.forEach((_, at) => (hangs[step.cells[(at + 1) % before.length]] = before[at]));
      }
    });
    const home = hangs.filter((from, place) => found[from] !== place && wall.cells[place].state !== "unread").length;
    return { wrong, home, steps: wall.steps.length };
  });
  check(`in ${truth.steps} steps each shows what hangs there by then`, truth.wrong.length === 0 && truth.steps > 20, truth.wrong.slice(0, 3));
  check("and carried out in order they put the wall right", truth.home === 0, `${truth.home} not at home`);

  await page.locator("#steps input").first().check();
  const shared = await two.waitForFunction(() => document.querySelector("#steps input:checked"), null, { timeout: 1_000 }).then(() => true, () => false);
  check("a tick on one phone is on the other within a second", shared);

  await page.evaluate(() => scrollTo(0, 1_200));
  stop();
  await page.waitForFunction(() => !document.getElementById("lost").hidden, null, { timeout: 20_000 });
  const box = await page.locator("#lost").boundingBox();
  check("that the laptop is gone is said where the helper looks", box && box.y >= 0 && box.y + box.height <= 844 && (await page.evaluate(() => scrollY)) > 500, JSON.stringify(box));
  await page.context().close();
  await two.context().close();
};
