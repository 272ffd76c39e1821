// The helper's and the room's page in WebKit, whose kin runs on iPhones, with a real program behind them:
//   node tools/outside/serve/webkit.mjs EVERYSQUARE OUT
// Needs Node 20, WebKitGTK with its driver and Xvfb (on Debian: webkit2gtk-driver, xvfb) and no network. Drives the browser by the W3C
// WebDriver protocol. A photo goes the whole way on one phone, another phone and the room follow. Ends with "N passed, M failed" and
// exits 1 where one failed.
import { spawn, execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { asReal } from "./photo.mjs";
import { check, finish, wait } from "./tally.mjs";

const [everysquare, out] = process.argv.slice(2, 4).map((path) => resolve(path));
const PORT = 18441;
const SCREEN = ":87";
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf"; // W3C WebDriver, 12.1
const ANSWER_MS = 60_000; // a busy machine
const children = [];
process.on("exit", () => children.forEach((child) => child.kill("SIGKILL")));

const child = (command, words, options = {}) => {
  const one = spawn(command, words, { stdio: "ignore", ...options });
  children.push(one);
  return one;
};

// ---- an event, a photo, the program
rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
const event = join(out, "evening");
const run = (...words) => execFileSync(everysquare, words, { encoding: "utf8" });
run("new", event, "--picture", "samples/harbour-evening/picture.png", "--columns", "10", "--rows", "8", "--name", "Harbor library night", "--tag", "K7M");
run("print", event);
run("rehearse", event, "--seed", "5", "--swaps", "2", "--turns", "2", "--missing", "6");
const photo = asReal(join(event, "rehearsals", "5.jpg"));
const links = await new Promise((done, fail) => {
  const program = child(everysquare, ["serve", event, "--no-browser", "--port", String(PORT)], { stdio: ["ignore", "pipe", "pipe"] });
  let said = "";
  program.stderr.on("data", (data) => fail(new Error(String(data))));
  program.stdout.on("data", (data) => {
    said += data;
    const found = said.match(/http:\S+/g) || [];
    if (found.length >= 2) done({ helpers: found[0], room: found[1] });
  });
});

// ---- the browser
const small = readdirSync("/usr/lib", { recursive: false }).map((name) => join("/usr/lib", name, "webkit2gtk-4.1", "MiniBrowser")).find(existsSync);
if (!small) throw new Error("WebKitGTK's MiniBrowser is not here");
child("Xvfb", [SCREEN, "-screen", "0", "1600x1200x24"]);
await wait(1500);
let next = 4480;
const browser = async (width, height) => {
  const port = next;
  next += 1;
  child("WebKitWebDriver", [`--port=${port}`], { env: { ...process.env, DISPLAY: SCREEN, LIBGL_ALWAYS_SOFTWARE: "1", WEBKIT_DISABLE_COMPOSITING_MODE: "1", WEBKIT_FORCE_SANDBOX: "0" } });
  const call = async (method, path, body) => {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, { method, body: body ? JSON.stringify(body) : undefined, signal: AbortSignal.timeout(ANSWER_MS) });
    const { value } = await answer.json();
    if (!answer.ok) throw new Error(`${method} ${path}: ${value.error} ${value.message}`);
    return value;
  };
  for (let tries = 0; tries < 40; tries += 1) {
    const up = await fetch(`http://127.0.0.1:${port}/status`).then(() => true, () => false);
    if (up) break;
    await wait(250);
  }
  const { sessionId } = await call("POST", "/session", { capabilities: { alwaysMatch: { browserName: "MiniBrowser", pageLoadStrategy: "eager", "webkitgtk:browserOptions": { binary: small, args: ["--automation"] } } } });
  const at = `/session/${sessionId}`;
  await call("POST", `${at}/window/rect`, { width, height }).catch(() => null);
  const find = (using) => call("POST", `${at}/element`, { using: "css selector", value: using }).then((found) => found[ELEMENT]);
  const evaluate = (script, ...args) => call("POST", `${at}/execute/sync`, { script, args });
  return {
    go: (url) => call("POST", `${at}/url`, { url }),
    click: async (using) => {
      await evaluate("document.querySelector(arguments[0]).scrollIntoView({ block: 'center' })", using); // not under the bar
      await call("POST", `${at}/element/${await find(using)}/click`, {});
    },
    type: async (using, text) => call("POST", `${at}/element/${await find(using)}/value`, { text }),
    evaluate,
    until: async (what, script, limit = ANSWER_MS) => {
      const end = Date.now() + limit;
      let value = null;
      while (Date.now() < end) {
        value = await evaluate(script).catch(() => null);
        if (value) return value;
        await wait(200);
      }
      return null;
    },
    picture: async (name) => writeFileSync(join(out, `${name}.png`), Buffer.from(await call("GET", `${at}/screenshot`), "base64")),
    end: () => call("DELETE", at).catch(() => null),
  };
};
const text = (id) => `return document.getElementById(${JSON.stringify(id)}).textContent.trim()`;

// ---- one phone sends, another follows, the room too
const phone = await browser(480, 900);
await phone.go(links.helpers);
check("the first page says that there is no photo yet", (await phone.until("headline", text("headline"))) === "No photo yet", await phone.evaluate(text("headline")));
check("it is WebKit", /AppleWebKit/.test(await phone.evaluate("return navigator.userAgent")) && !/Chrome/.test(await phone.evaluate("return navigator.userAgent")));
check("its letters are the program's own", await phone.until("letters", "return [...document.fonts].some((face) => face.status === 'loaded')", 10_000));
await phone.evaluate("window.parts = []; new MutationObserver(() => { const bar = document.getElementById('progress'); window.parts.push([document.getElementById('status').textContent, bar.hasAttribute('value') ? bar.value : null]); }).observe(document.getElementById('working'), { subtree: true, attributes: true, childList: true, characterData: true });");
const other = await browser(480, 900);
await other.go(links.helpers);
await other.until("headline", text("headline"));
const room = await browser(1400, 900);
await room.go(links.room);
await phone.type("#gallery", photo);
const headline = await phone.until("answer", "return /to fix/.test(document.getElementById('headline').textContent) && document.getElementById('headline').textContent.trim()");
check("a photo is read and told", /things to fix/.test(headline || ""), headline);
const parts = await phone.evaluate("return window.parts");
const reading = parts.filter(([words, part]) => /Reading|Checking|read/i.test(words) && part !== null).map(([, part]) => part);
check("the page tells how far the reading is", reading.length >= 2 && reading.some((part) => part > 0.1), JSON.stringify(parts.slice(-8)));
check("the marked photo is shown", await phone.until("photo", "const i = document.getElementById('photo-picture'); return i.complete && i.naturalWidth > 300", 15_000));
const steps = await phone.evaluate("return document.querySelectorAll('#steps > li').length");
check("each fix is a step", steps >= 4, String(steps));
check("the other phone has the same steps", (await other.until("steps", `return document.querySelectorAll('#steps > li').length === ${steps}`, 10_000)) !== null);
check("nothing sticks out sideways", await phone.evaluate("return document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
await phone.picture("phone");
// a tap on the little wall leads to the spot and back
await phone.click("#steps > li:first-child .spot-button");
await wait(600);
check("a tap leads from the fix to its spot", await phone.evaluate("return document.querySelector('#cells .pointed, #cells [aria-current], .pointed') !== null"));
await phone.picture("spot");
// ticks are shared
await phone.evaluate("window.scrollTo(0, 0)");
await phone.click("#steps > li:first-child input[type=checkbox]");
check("a tick reaches the other phone", (await other.until("tick", "return document.querySelectorAll('#steps > li.done').length === 1", 5_000)) !== null);
// pieces
await other.click("#tab-pieces");
check("the pieces to hand out show on their tab", (await other.until("pieces", "return document.getElementById('panel-pieces').hidden === false && /\\d/.test(document.getElementById('missing-say').textContent)", 5_000)) !== null);
await other.picture("pieces");
// the map: every spot lies on its own part of the wall's picture, within a pixel
const off = await phone.evaluate(`
  const picture = document.getElementById('map-picture').getBoundingClientRect();
  const cells = [...document.querySelectorAll('#cells button')].map((cell) => cell.getBoundingClientRect());
  const columns = 10, rows = 8;
  if (cells.length !== columns * rows) return 'cells ' + cells.length;
  const step = picture.width / columns;
  return Math.max(...cells.map((cell, i) => Math.max(Math.abs(cell.left - picture.left - (i % columns) * step), Math.abs(cell.top - picture.top - Math.floor(i / columns) * (picture.height / rows)))));`);
check("on the map each spot lies on its own part of the wall", typeof off === "number" && off <= 1.01, String(off));
// the room
check("the room's page counts the squares", (await room.until("room", "return /\\d/.test(document.body.innerText)", 10_000)) !== null);
await other.end();
const late = await browser(480, 900);
await late.go(links.helpers.replace(/\/$/, ""));
check("a link without its last slash works", (await late.until("headline", text("headline"), 10_000)) === headline);
await Promise.all([phone, late, room].map((one) => one.end()));
finish();
