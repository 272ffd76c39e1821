// What the browser checks share: an event, a program that serves it, pages in Chromium, and the tally.
import { spawn, execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, utimesSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { asReal } from "./photo.mjs";
import { check, finish } from "./tally.mjs";

export { check, wait } from "./tally.mjs";

export const [modules, chromium, everysquare, out] = process.argv.slice(2).map((path) => resolve(path));
const require = createRequire(join(modules, "package.json"));
const { chromium: browserType } = require("playwright-core");
const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

export const run = (...words) => execFileSync(everysquare, words, { encoding: "utf8" });

// A printed event of our own harbour picture in the folder `name` of OUT.
export const eventFolder = (name, ...more) => {
  const event = join(out, name);
  rmSync(event, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });
  run("new", event, "--picture", "samples/harbour-evening/picture.png", "--name", "Harbor library night", "--tag", "K7M", ...more);
  run("print", event);
  return event;
};
// A made photo of an event's wall that passes for a real one.
export const wallPhoto = (event, seed, faults) => {
  const options = Object.entries(faults).flatMap(([name, count]) => [`--${name}`, String(count)]);
  run("rehearse", event, "--seed", String(seed), ...options);
  return asReal(join(event, "rehearsals", `${seed}.jpg`));
};
// As if it had been taken just now: the newest photo of a spot wins.
export const fresh = (file) => {
  utimesSync(file, new Date(), new Date());
  return file;
};

let program = null;
process.on("exit", () => program && program.kill("SIGKILL"));
export const start = (event, port, ...more) =>
  new Promise((done, fail) => {
    program = spawn(everysquare, ["serve", event, "--no-browser", "--port", String(port), ...more]);
    let said = "";
    program.stderr.on("data", (data) => fail(new Error(String(data))));
    program.stdout.on("data", (data) => {
      said += data;
      const links = said.match(/http:\S+/g) || []; // the helpers' first, then the room's
      if (links.length >= 2) done({ helpers: links[0], room: links[1] });
    });
  });
export const stop = () =>
  new Promise((done) => {
    program.on("exit", done);
    program.kill("SIGKILL");
  });

const browser = await browserType.launch({ executablePath: chromium, args: ["--no-sandbox", "--disable-quic", "--disable-background-networking"] });
// What no page may do: complain, fail, or ask for anything elsewhere.
export const strange = [];
export const pageOf = async (port, options) => {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  page.on("console", (message) => {
    const expected = /Failed to load resource|ERR_CONNECTION|EventSource/.test(message.text());
    if (message.type() === "error" && !expected) strange.push(message.text());
  });
  page.on("pageerror", (error) => strange.push(String(error)));
  page.on("request", (request) => {
    if (![`http://127.0.0.1:${port}/`, "data:", "blob:"].some((home) => request.url().startsWith(home))) strange.push(request.url());
  });
  return page;
};
// axe is put in through the debugger, as the page's own policy forbids strange scripts
export const axe = async (page, name) => {
  await page.evaluate(AXE);
  const found = await page.evaluate(() => window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }));
  const faults = found.violations.map((fault) => `${fault.id} (${fault.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(", ")})`);
  check(`axe-core: ${name}, ${found.passes.length} rules hold`, faults.length === 0, faults.join("; "));
};
export const fits = async (page, name) => {
  const wide = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
  check(`nothing sticks out sideways: ${name}`, wide[0] <= wide[1], wide.join(" > "));
};
export const picture = (page, name, fullPage = false) => page.screenshot({ path: join(out, `${name}.png`), fullPage });

export const end = async () => {
  check("no page complained or asked for anything elsewhere", strange.length === 0, strange.join("; "));
  await browser.close();
  if (program) program.kill("SIGKILL");
  finish();
};
