// The helper's and the room's page in Chromium, with a real program behind them:
//   node tools/outside/serve/page.mjs MODULES CHROMIUM EVERYSQUARE OUT [past | way]
// MODULES is a folder where `npm ci` has put what package.json names. Needs Node 20 and no network. Made photos go the whole way:
// sent, read, shown, ticked; bad files, two phones, a reload in the middle, kill -9, the keyboard alone, axe-core (WCAG 2.2 A and AA),
// light, dark, large letters, and faults of the past (past.mjs; with `past` those alone, with `way` without them). What was seen is kept in OUT. Ends with "N passed, M failed" and exits 1 where one failed.
import { spawn, execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, readdirSync, rmSync, truncateSync, utimesSync, writeFileSync, copyFileSync, existsSync } from "node:fs";
import { createRequire } from "node:module";
import { networkInterfaces } from "node:os";
import { join, resolve } from "node:path";
import { asReal } from "./photo.mjs";
import { check, finish, wait } from "./tally.mjs";
import { find } from "./find.mjs";
import { past } from "./past.mjs";

const [modules, chromium, everysquare, out] = process.argv.slice(2, 6).map((path) => resolve(path));
const part = process.argv[6] || "";
const require = createRequire(join(modules, "package.json"));
const { chromium: browserType } = require("playwright-core");
const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const PORT = 18417;
const PHONE = { width: 360, height: 740 };
const FIRST_PAGE_BYTES = 90_000;
const READING_MS = 60_000; // a busy machine
const NEWEST = { swaps: 2, turns: 2, missing: 12, scribbled: 1 };


// ---- an event, made photos, the program
rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
const event = join(out, "evening");
const run = (...words) => execFileSync(everysquare, words, { encoding: "utf8" });
run("new", event, "--picture", "samples/harbour-evening/picture.png", "--columns", "10", "--rows", "8", "--name", "Harbour library evening", "--tag", "K7M");
run("print", event);
const made = (seed, faults) => {
  const options = Object.entries(faults).flatMap(([name, count]) => (count === true ? [`--${name}`] : [`--${name}`, String(count)]));
  run("rehearse", event, "--seed", String(seed), ...options);
  return asReal(join(event, "rehearsals", `${seed}.jpg`));
};
const first = made(5, NEWEST);
const second = made(6, { swaps: 1, turns: 1, missing: 4 });
const cut = join(out, "cut.jpg");
copyFileSync(first, cut);
truncateSync(cut, 900_000);
const letter = join(out, "letter.jpg");
writeFileSync(letter, "Dear helper, this is no photo.");
const checks = () => (existsSync(join(event, "checks")) ? readdirSync(join(event, "checks")).filter((name) => !name.startsWith(".")).sort() : []);
const report = () => JSON.parse(readFileSync(join(event, "checks", checks().at(-1), "report.json"), "utf8"));
const toFix = () => report().fixes.filter((fix) => fix.do !== "fetch").length;

// the laptop's own address in a network, where it has one: phones come from there
const own = Object.values(networkInterfaces()).flat().find((one) => one.family === "IPv4" && !one.internal && /^(10|192\.168|172\.(1[6-9]|2\d|3[01]))\./.test(one.address));
const lan = own ? ["--address", own.address] : [];
const homes = ["127.0.0.1", ...(own ? [own.address] : [])].map((host) => `http://${host}:${PORT}/`);
let program = null;
process.on("exit", () => program && program.kill("SIGKILL"));
const start = () =>
  new Promise((done, fail) => {
    program = spawn(everysquare, ["serve", event, "--no-browser", "--port", String(PORT), ...lan]);
    let said = "";
    program.stderr.on("data", (data) => fail(new Error(String(data))));
    program.stdout.on("data", (data) => {
      said += data;
      const links = said.match(/http:\S+/g) || []; // the helpers' first, then the room's
      if (links.length >= 2) done({ helpers: links[0], room: links[1] });
    });
  });

// ---- what is looked at on every page
const browser = await browserType.launch({ executablePath: chromium, args: ["--no-sandbox", "--disable-quic", "--disable-background-networking"] });
const strange = [];
const phone = async (more = {}) => {
  const context = await browser.newContext({ viewport: PHONE, deviceScaleFactor: 2, isMobile: true, hasTouch: true, ...more });
  const page = await context.newPage();
  page.on("console", (message) => {
    const expected = /Failed to load resource|ERR_CONNECTION|EventSource/.test(message.text());
    if (message.type() === "error" && !expected) strange.push(message.text());
  });
  page.on("pageerror", (error) => strange.push(String(error)));
  page.on("request", (request) => {
    if (![...homes, "data:", "blob:"].some((home) => request.url().startsWith(home))) strange.push(request.url());
  });
  await page.addInitScript(() => {
    window.shifted = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.shifted += entry.value;
    }).observe({ type: "layout-shift", buffered: true });
  });
  return page;
};
// axe is put in through the debugger, as the page's own policy forbids strange scripts
const axe = async (page, name) => {
  // all of the page at once, so that nothing lies under the bar
  const size = page.viewportSize();
  const open = await page.evaluate(() => document.querySelector("dialog[open]") !== null);
  if (!open) await page.setViewportSize({ width: size.width, height: await page.evaluate(() => document.documentElement.scrollHeight + 300) });
  await page.evaluate(AXE);
  const found = await page.evaluate(() => window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }));
  await page.setViewportSize(size);
  const faults = found.violations.map((fault) => `${fault.id} (${fault.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(", ")})`);
  check(`axe-core: ${name}, ${found.passes.length} rules hold`, faults.length === 0, faults.join("; "));
};
const fits = async (page, name) => {
  const wide = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
  check(`nothing sticks out sideways: ${name}`, wide[0] <= wide[1], wide.join(" > "));
};
const picture = (page, name, fullPage = true) => page.screenshot({ path: join(out, `${name}.png`), fullPage });
const headline = (page) => page.locator("#headline").innerText();
const answered = async (page, before) => {
  await page.waitForFunction((before) => document.getElementById("headline").textContent !== before && document.getElementById("working").hidden, before, { timeout: READING_MS });
};
// as if it had been taken just now: the newest photo of a cell wins
const fresh = (file) => {
  utimesSync(file, new Date(), new Date());
  return file;
};
const send = async (page, file, input = "#camera") => {
  const before = await headline(page);
  fresh(file);
  const start = Date.now();
  await page.setInputFiles(input, file);
  await answered(page, before);
  return Date.now() - start;
};

const links = await start();
const stop = () => program.kill("SIGKILL");
if (part !== "way") await past({ check, phone, made, links, wait, stop, letter, cutPhoto: cut });
if (part === "past") {
  await browser.close();
  finish();
}
stop();
rmSync(join(event, "checks"), { recursive: true, force: true });
rmSync(join(event, ".helpers-list.json"), { force: true });
await wait(500);
await start();

// ---- the whole way on one phone
const one = await phone();
let bytes = 0;
one.on("response", async (response) => {
  const sizes = await response.request().sizes().catch(() => null);
  if (sizes) bytes += sizes.responseBodySize + sizes.responseHeadersSize;
});
await one.goto(links.helpers);
await one.waitForFunction(() => document.getElementById("headline").textContent.trim() !== "");
await wait(500);
check(`first page: ${bytes} bytes over the wire, at most ${FIRST_PAGE_BYTES}`, bytes > 10_000 && bytes <= FIRST_PAGE_BYTES, bytes);
const shifted = await one.evaluate(() => window.shifted);
check("first page: no layout shift", shifted < 0.005, shifted);
await picture(one, "phone-first");
await axe(one, "phone, before the first photo");
await fits(one, "phone, before the first photo");

const took = await send(one, first);
check(`a photo of 12 megapixels is read and shown (${took} ms on this machine)`, checks().length === 1, checks());
check("the steps are those of the check", (await one.locator("#steps > li").count()) === toFix(), await one.locator("#steps > li").count());
check("the headline has the focus", await one.evaluate(() => document.activeElement.id === "headline"));
await one.waitForFunction(() => [...document.images].filter((image) => image.getAttribute("src")).every((image) => image.complete && image.naturalWidth > 0), null, { timeout: 20_000 });
check("every picture shows", true);
await picture(one, "phone-answer");
await picture(one, "phone-answer-window", false);
await axe(one, "phone, with an answer");
await fits(one, "phone, with an answer");

check("the marked photo heads the answer", await one.evaluate(() => document.getElementById("photo-picture").getBoundingClientRect().bottom <= document.getElementById("headline").getBoundingClientRect().top));
await one.setViewportSize({ width: 390, height: 844 });
const five = await one.evaluate(() => {
  const items = [...document.querySelectorAll("#steps > li")].slice(0, 5);
  return items.reduce((sum, item) => sum + item.offsetHeight, 0) / items.length;
});
const room5 = await one.evaluate(() => 844 - document.getElementById("bar").offsetHeight);
check("five fixes fit a screen of 390 × 844", five * 5 <= room5, `${five} px each, ${room5} px of room`);
check("each fix says where it is", (await one.locator("#steps .where").count()) >= toFix() && (await one.locator("#steps svg.little").count()) === toFix());
await one.setViewportSize(PHONE);

// ---- what is marked is the same for all phones, and outlasts a reload
const other = await phone();
await other.goto(links.helpers);
await other.waitForSelector("#steps input");
const told1 = async (name, page, when) => check(name, await page.waitForFunction(when, null, { timeout: 1_000 }).then(() => true, () => false));
await one.locator("#steps .mine").nth(1).tap();
await told1("who is on a step is seen on another phone within a second", other, () => document.querySelectorAll("#steps .by-another").length === 1);
await one.locator("#steps input").first().check();
await told1("a tick is seen on another phone within a second", other, () => document.querySelector("#steps input").checked);
await other.locator("#tab-pieces").tap();
await one.locator("#tab-pieces").tap();
await picture(one, "phone-pieces");
await axe(one, "phone, pieces");
await fits(one, "phone, pieces");
const label = await one.locator("#next button").first().getAttribute("data-key");
await one.locator("#next button").first().tap();
await told1("a piece handed out is out on another phone within a second", other, () => document.querySelectorAll("#out > li").length === 1);
check("and is offered to nobody any more", (await other.locator(`[data-key="${label}"]`).count()) === 0);
await other.locator("#out .prints summary").tap();
const printed = await other.evaluate(async () => {
  const told = [];
  for (const link of document.querySelectorAll("#out .prints a")) {
    const answer = await fetch(link.href);
    told.push([link.textContent, answer.status, answer.headers.get("content-type"), (await answer.arrayBuffer()).byteLength]);
  }
  return told;
});
check("what is printed of a piece comes as documents", printed.length === 5 && printed.every(([, status, type, size]) => status === 200 && type === "application/pdf" && size > 5_000), JSON.stringify(printed));
await picture(other, "phone-prints");
await axe(other, "phone, what can be printed of a piece");
await other.locator("#out button").first().tap();
await told1("a piece that came back is back everywhere", one, () => document.querySelectorAll("#back > li").length === 1 && document.querySelectorAll("#out > li").length === 0);
await one.locator("#next button").first().tap();
await one.locator("#news-do").tap();
await told1("and a slip is undone", other, () => document.querySelectorAll("#out > li").length === 0);
await picture(one, "phone-pieces-out");
await axe(one, "phone, pieces out and back");
await one.reload();
await one.waitForSelector("#back > li");
check("a piece handed out stays so, and the tab too", (await one.locator("#missing [aria-pressed=true]").count()) === 1 && (await one.locator("#panel-pieces").isVisible()));
await one.locator("#tab-wall").tap();
check("a tick outlasts a reload", await one.locator("#steps input").first().isChecked());
await other.context().close();

// ---- from a fix to the map, and back
const placesOf = await one.locator("#steps > li").first().getAttribute("data-key");
await one.locator("#steps .spot-button").first().tap();
const pointed = await one.evaluate(() => document.activeElement.getAttribute("aria-label"));
check("a tap leads from a fix to its spot on the map", placesOf.includes(pointed.split(":")[0].split(" ")[0]), `${placesOf}: ${pointed}`);
await one.keyboard.press("Enter");
check("its sheet says what to do", (await one.locator("#cell-say").innerText()).includes((await one.locator("#steps .words").first().innerText())), await one.locator("#cell-say").innerText());
check("and has the tick", await one.locator("#cell-step input").isChecked());
await one.locator("#cell-step input").uncheck();
await told1("which takes it away in the list too", one, () => !document.querySelector("#steps input").checked);
await one.locator("#cell-step input").check();
await one.locator("#cell-step > button").last().tap();
check("and a tap leads back to the list", await one.evaluate(() => document.activeElement.matches("#steps input")));

// ---- the map
await one.locator("#cells button").nth(13).tap();
check("a cell opens", await one.locator("#cell").evaluate((dialog) => dialog.open));
await one.waitForFunction(() => ["cell-hangs", "cell-belongs"].every((id) => document.getElementById(id).naturalWidth > 20));
await picture(one, "phone-cell", false);
await axe(one, "phone, a cell opened");
await one.locator("#cell-close").tap();
const side = () => one.locator("#cells button").first().evaluate((button) => button.getBoundingClientRect().width);
const small = await side();
await one.locator("#map").scrollIntoViewIfNeeded();
const box = await one.locator("#map").boundingBox();
const debug = await one.context().newCDPSession(one);
const touch = (type, apart) => {
  const points = [-1, 1].map((sign, id) => ({ x: box.x + box.width / 2 + sign * apart, y: box.y + box.height / 2, id }));
  return debug.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : points });
};
await touch("touchStart", 30);
for (const apart of [40, 55, 70, 85]) await touch("touchMove", apart);
await touch("touchEnd", 0);
check("two fingers make the map larger", (await side()) > small * 1.5, `${small} to ${await side()}`);
await picture(one, "phone-map-large", false);
await one.evaluate(() => scrollTo(0, 0));
const photoBox = await one.locator("#photo").boundingBox();
const photoTouch = (type, apart) => {
  const points = [-1, 1].map((sign, id) => ({ x: photoBox.x + photoBox.width / 2 + sign * apart, y: photoBox.y + photoBox.height / 2, id }));
  return debug.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : points });
};
await photoTouch("touchStart", 30);
for (const apart of [40, 60, 80, 95]) await photoTouch("touchMove", apart);
await photoTouch("touchEnd", 0);
const zoomed = await one.evaluate(() => document.getElementById("photo-picture").offsetWidth / document.getElementById("photo").clientWidth);
check("two fingers make the photo larger, and the whole of it is fetched", zoomed > 1.5 && (await one.locator("#photo-picture").getAttribute("src")).startsWith("marked-large"), zoomed);

await find({ check, one, file: fresh(second), checks, picture, axe, fits, readingMs: READING_MS });

// ---- what cannot be read
for (const [file, what] of [[letter, /read this file as a photo/i], [cut, /cut off|cortada/i]]) {
  await one.setInputFiles("#gallery", file);
  await one.waitForFunction(() => document.getElementById("problem").textContent !== "", null, { timeout: READING_MS });
  const said = await one.locator("#problem").innerText();
  check(`a bad file is told: ${said}`, what.test(said), said);
  if (file === letter) await picture(one, "phone-bad-file", false);
}
check("and nothing of it is kept", checks().length === 1);

// ---- a reload in the middle
await one.setInputFiles("#camera", fresh(second));
await wait(150);
await one.reload();
await one.waitForSelector("#steps input");
check("a reload in the middle of a photo leaves a page that works", (await headline(one)) !== "");
await wait(6000);

// ---- two phones and the room
const room = await phone({ viewport: { width: 1280, height: 800 }, isMobile: false, hasTouch: false });
const wallPictures = [];
room.on("request", (request) => request.url().includes("wall.jpg") && wallPictures.push(request.url()));
await room.goto(links.room);
await room.waitForFunction(() => document.getElementById("hang").textContent !== "");
check("the room's page keeps the secret: no picture is even asked for", wallPictures.length === 0, wallPictures);
await picture(room, "room-covered", false);
await axe(room, "room, covered");
const hangBefore = await room.locator("#hang").innerText();
const two = await phone();
await two.goto(links.helpers);
await two.waitForSelector("#steps-part:not([hidden]), #headline");
await two.waitForFunction(() => document.getElementById("headline").textContent.trim() !== "");
check("a second phone sees what the first has sent", (await headline(two)) === (await headline(one)));
const third = made(7, { swaps: 3, turns: 0, missing: 20 });
const headlineBefore = await headline(one);
const spotTop = () => one.locator("#cells button").nth(35).evaluate((spot) => spot.getBoundingClientRect().top);
await one.locator("#wall-heading").evaluate((heading) => heading.scrollIntoView());
await one.evaluate(() => (document.getElementById("news").hidden = true)); // so that it comes, and pushes
const topBefore = await spotTop();
const markedPhoto = "**/marked.jpg*"; // the marked photo comes after all the rest, as on a bad network
await one.route(markedPhoto, async (route) => {
  await wait(1500);
  await route.continue();
});
const marked = () => one.evaluate(() => document.getElementById("photo-picture").currentSrc);
const markedBefore = await marked();
await send(two, third, "#gallery");
await one.waitForFunction((before) => document.getElementById("headline").textContent !== before, headlineBefore, { timeout: 10_000 });
check("and leaves the page where it was", Math.abs((await spotTop()) - topBefore) <= 2, (await spotTop()) - topBefore);
await one.waitForFunction((before) => {
  const picture = document.getElementById("photo-picture");
  return picture.currentSrc !== before && picture.complete;
}, markedBefore);
check("also once the photo has come", Math.abs((await spotTop()) - topBefore) <= 2, (await spotTop()) - topBefore);
await one.unroute(markedPhoto);
const news = await one.locator("#news-say").innerText();
check(`a photo from elsewhere announces itself: ${news}`, /^New photo, .*: \d+ done, \d+ left$/.test(news), news);
check("the first phone sees what the second has sent", (await headline(one)) === (await headline(two)));
await room.waitForFunction((before) => document.getElementById("hang").textContent !== before, hangBefore, { timeout: 10_000 });
check("the room's page goes along", (await room.locator("#hang").innerText()) !== hangBefore);
check("the helpers' code shows where phones are let in", (await room.locator("#show-code").isVisible()) === Boolean(own));
if (own) {
  await room.locator("#show-code").click();
  await room.waitForFunction(() => document.getElementById("code-picture").naturalWidth > 0);
  await picture(room, "room-code", false);
  await axe(room, "room, the helpers' code");
  await room.locator("#code-close").click();
}
const told = await (await room.request.get(`${links.room}wall.json`)).text();
check("the room is told counts and nothing of fixes", !/steps|found|say":/.test(told) && !(await room.request.post(`${links.room}photo`)).ok());
await room.setViewportSize({ width: 500, height: 900 });
await picture(room, "room-narrow", false);
await fits(room, "room, narrow");

// ---- kill -9, and again
await two.locator("#steps input").first().check();
const before = [await headline(one), checks().length];
const dies = two.waitForFunction(() => !document.getElementById("lost").hidden, null, { timeout: 20_000 });
await two.setInputFiles("#camera", fresh(first));
await wait(700);
program.kill("SIGKILL");
await dies;
check(`a laptop that is gone is told: ${await two.locator("#lost").innerText()}`, true);
await two.waitForFunction(() => document.getElementById("problem").textContent !== "", null, { timeout: 20_000 });
check("a photo that did not get through can be sent again", await two.locator("#problem .retry").isVisible());
await picture(two, "phone-lost", false);
await axe(two, "phone, connection lost");
check("nothing half-written is left", checks().every((name) => existsSync(join(event, "checks", name, "report.json")) && existsSync(join(event, "checks", name, "seen.json"))));
const again = await start();
check("started again, the link is the same", again.helpers === links.helpers);
await one.waitForFunction(() => document.getElementById("lost").hidden, null, { timeout: 20_000 });
check("and the phone shows the last complete check", (await headline(one)) === before[0] && checks().length === before[1], `${await headline(one)}, ${checks().length} checks`);
await two.waitForFunction(() => document.getElementById("lost").hidden, null, { timeout: 20_000 });
check("ticks are still there", await two.locator("#steps input").first().isChecked());
const lostHeadline = await headline(two);
await two.locator("#problem .retry").tap();
await answered(two, lostHeadline);
check("the photo is sent again and read", checks().length === before[1] + 1, checks().length);

// ---- a photo from before comes late
utimesSync(second, new Date(Date.now() - 7_200_000), new Date(Date.now() - 7_200_000));
const known = await headline(two);
await two.setInputFiles("#gallery", second);
await two.waitForFunction(() => document.getElementById("problem").textContent !== "", null, { timeout: READING_MS });
check("an older photo changes nothing, and that is said", (await headline(two)) === known, await two.locator("#problem").innerText());

// ---- a photo is taken back, and one is canceled on its way
const undone = [await headline(two), checks().length];
await send(two, made(9, { swaps: 5, missing: 3 }), "#gallery");
await two.locator("#undo-photo").tap();
await axe(two, "phone, undo");
await two.locator("#undo-yes").tap();
await two.waitForFunction((before) => document.getElementById("headline").textContent === before, undone[0], { timeout: 10_000 });
check("the last photo is taken back", checks().length === undone[1], checks().length);
await one.waitForFunction((before) => document.getElementById("headline").textContent === before, undone[0], { timeout: 10_000 });
const slow = await two.context().newCDPSession(two);
await slow.send("Network.enable");
await slow.send("Network.emulateNetworkConditions", { offline: false, latency: 20, downloadThroughput: 250_000, uploadThroughput: 250_000 });
await two.setInputFiles("#gallery", fresh(first));
await two.waitForFunction(() => document.getElementById("thumbnail").naturalWidth > 0 && document.getElementById("progress").value > 0, null, { timeout: 20_000 });
await picture(two, "phone-sending", false);
await axe(two, "phone, sending");
await two.locator("#cancel").tap();
await wait(500);
check("a photo on its way is shown, and can be canceled", (await two.locator("#working").isHidden()) && (await two.locator("#problem > li").count()) === 0 && checks().length === undone[1]);
await slow.send("Network.emulateNetworkConditions", { offline: false, latency: 0, downloadThroughput: -1, uploadThroughput: -1 });
check("the next helper's code shows where phones are let in", (await two.locator("#add-helper").isVisible()) === Boolean(own));
if (own) {
  await two.locator("#add-helper").tap();
  await two.waitForFunction(() => document.getElementById("code-picture").naturalWidth > 0);
  await axe(two, "phone, the next helper's code");
  await two.locator("#code-close").tap();
}

// ---- the keyboard alone
const keys = await phone({ viewport: { width: 800, height: 900 }, isMobile: false, hasTouch: false });
await keys.goto(links.helpers);
await keys.waitForSelector("#steps input");
const tabTo = async (wanted) => {
  for (let presses = 0; presses < 80; presses += 1) {
    await keys.keyboard.press("Tab");
    const here = await keys.evaluate((wanted) => document.activeElement.matches(wanted), wanted);
    const seen = await keys.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
    if (here) return seen !== "none";
  }
  return false;
};
check("Tab reaches a tick, and shows where it is", await tabTo("#steps input"));
await keys.keyboard.press("Space");
await wait(500);
check("Space ticks, and the focus stays", await keys.evaluate(() => document.activeElement.matches("#steps input") && document.activeElement.checked));
check("Tab reaches the map", await tabTo("#cells button"));
await keys.keyboard.press("ArrowRight");
await keys.keyboard.press("ArrowDown");
check("arrows walk over the map", (await keys.evaluate(() => document.activeElement.dataset.place)) === "11");
await keys.keyboard.press("Enter");
check("Enter opens a cell", await keys.locator("#cell").evaluate((dialog) => dialog.open));
await keys.keyboard.press("Escape");
check("Escape closes it, and the focus is back", (await keys.evaluate(() => document.activeElement.dataset.place)) === "11");
check("Tab reaches the button to photograph", await tabTo("#take"));
// a browser without a screen now and then does not show the dialogue at the first press
const chosen = async () => {
  for (let tries = 0; tries < 3; tries += 1) {
    const chooser = keys.waitForEvent("filechooser", { timeout: 8_000 }).catch(() => null);
    await keys.keyboard.press("Enter");
    const shown = await chooser;
    if (shown) return shown;
  }
  throw new Error("no dialogue for choosing a file");
};
const chooser = await chosen();
const keysBefore = await headline(keys);
await chooser.setFiles(fresh(second));
await answered(keys, keysBefore);
check("and a photo is sent without a pointer", true);

// ---- how it looks: dark, large letters, another language
const dark = await phone({ colorScheme: "dark" });
await dark.goto(links.helpers);
await dark.waitForSelector("#steps input");
await wait(800);
await picture(dark, "phone-dark");
await axe(dark, "phone, dark");
await dark.goto(links.room);
await wait(500);
await picture(dark, "room-dark", false);
await axe(dark, "room, dark");
const large = await phone();
await large.goto(links.helpers);
await large.waitForSelector("#steps input");
await large.evaluate(() => (document.documentElement.style.fontSize = "200%"));
await wait(800);
await picture(large, "phone-large");
await picture(large, "phone-large-window", false);
await fits(large, "letters of 200 %");
await axe(large, "phone, letters of 200 %");

program.kill("SIGINT");
await wait(1500);
const settings = join(event, "event.toml");
const toml = readFileSync(settings, "utf8");
if (!/^language/m.test(toml)) writeFileSync(settings, `language = "es"\n${toml}`);
else writeFileSync(settings, toml.replace(/^language = "en"/m, 'language = "es"'));
const spanishLinks = await start().catch(() => null);
if (spanishLinks) {
  const spanish = await phone();
  await spanish.goto(spanishLinks.helpers);
  await spanish.waitForSelector("#steps input");
  const language = await spanish.evaluate(() => document.documentElement.lang);
  check("the page speaks the event's language", language === "es", language);
  await wait(800);
  await picture(spanish, "phone-spanish");
  await fits(spanish, "Spanish");
  await axe(spanish, "phone, Spanish");
  await spanish.evaluate(() => (document.documentElement.style.fontSize = "200%"));
  await wait(500);
  await picture(spanish, "phone-spanish-large");
  await fits(spanish, "Spanish, letters of 200 %");
  await spanish.goto(spanishLinks.room);
  await spanish.setViewportSize({ width: 1280, height: 800 });
  await wait(500);
  await picture(spanish, "room-spanish", false);
  program.kill("SIGINT");
} else {
  console.log("Spanish: this program does not know the setting language, so it was not looked at");
}
check("no error in any page, nothing asked for elsewhere", strange.length === 0, strange.slice(0, 3).join("; "));

await browser.close();
finish();
