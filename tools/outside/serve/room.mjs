// The room's page in Chromium, with a real program behind it:
//   node tools/outside/serve/room.mjs MODULES CHROMIUM EVERYSQUARE OUT
// Made photos are sent as a helper's phone sends them: squares drop in, the picture stays hidden until somebody shows it and thinks
// twice, the original comes beside the whole mural, old news is marked as old. Light, dark, Spanish, narrow, without motion; axe-core.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { axe, check, end, eventFolder, fits, fresh, pageOf, picture, wallPhoto, run, start, stop, wait } from "./stage.mjs";

const PORT = 18427;
const WIDE = { viewport: { width: 1280, height: 720 } };
const event = eventFolder("room", "--columns", "10", "--rows", "8");
const few = wallPhoto(event, 31, { missing: 60 });
const more = wallPhoto(event, 32, { missing: 25 });
const whole = wallPhoto(event, 33, { missing: 0 });
let links = await start(event, PORT);
const send = async (page, file) => {
  const data = readFileSync(fresh(file));
  const url = new URL(links.helpers);
  const answer = await page.request.post(`${links.helpers}photo`, { headers: { origin: url.origin, "content-type": "image/jpeg" }, data, timeout: 60_000 });
  return answer.ok();
};
const counted = (page, least) => page.waitForFunction((least) => Number(document.getElementById("count").textContent) >= least, least, { timeout: 30_000 });
const asked = (page) => {
  const seen = [];
  page.on("request", (request) => /wall\.jpg|picture\.jpg/.test(request.url()) && seen.push(request.url()));
  return seen;
};

// ---- covered: lively, and silent about the picture
const room = await pageOf(PORT, WIDE);
const pictures = asked(room);
await room.addInitScript(() => {
  window.locks = 0;
  const request = navigator.wakeLock && navigator.wakeLock.request.bind(navigator.wakeLock);
  if (request) navigator.wakeLock.request = (kind) => { window.locks += 1; return request(kind); };
});
await room.goto(links.room);
await room.waitForFunction(() => document.getElementById("hang").textContent !== "");
check("the laptop is kept awake", (await room.evaluate(() => window.locks)) > 0);
check("a first photo is taken", await send(room, few));
await counted(room, 1);
const before = Number(await room.locator("#count").innerText());
check("squares that came are marked, and only they", (await room.locator("#cover > .came").count()) === before, before);
const hanging = () => room.evaluate(() => [...document.querySelectorAll("#cover > i")].map((cell) => cell.className));
const first = await hanging();
check("a second photo is taken", await send(room, more));
await counted(room, before + 1);
const after = Number(await room.locator("#count").innerText());
const second = await hanging();
const isNew = second.map((name, place) => name.includes("hangs") && !first[place].includes("hangs"));
check("exactly the new squares drop in", isNew.every((fresh, place) => fresh === second[place].includes("came")) && isNew.includes(true));
check("the sentence for ears says the count", (await room.locator("#hang").textContent()).includes(String(after)));
const colours = await room.evaluate(() => [...new Set([...document.querySelectorAll("#cover > .hangs")].map((cell) => cell.style.getPropertyValue("--colour")))]);
const own = [...readFileSync(join(event, "event.toml"), "utf8").matchAll(/srgb = "(#[0-9a-f]{6})"/g)].map((match) => match[1]);
check("the cover has the event's own colours", colours.length > 1 && colours.every((colour) => own.includes(colour)), colours);
// the cover's colours tell nothing: they are the same for another picture with these pencils
const lots = await room.evaluate(() => [...document.querySelectorAll("#cover > i")].map((cell) => cell.style.getPropertyValue("--colour")));
check("colours of the cover are by lot, the same after a reload", await (async () => {
  await room.reload();
  await room.waitForFunction(() => document.querySelectorAll("#cover > .hangs").length > 0);
  const again = await room.evaluate(() => [...document.querySelectorAll("#cover > i")].map((cell) => cell.style.getPropertyValue("--colour")));
  return JSON.stringify(again) === JSON.stringify(lots);
})());
check("nothing drops in when the page is opened", (await room.locator("#cover > .came").count()) === 0);
check("the secret is kept: no picture is even asked for", pictures.length === 0, pictures.join(" "));
await picture(room, "room-covered");
await axe(room, "room, covered");

// ---- showing it
await room.locator("#reveal").click();
check("showing the picture is asked a second time", await room.locator("#ask").isVisible());
check("the safe answer has the focus", await room.evaluate(() => document.activeElement.id === "ask-no"));
await picture(room, "room-ask");
await axe(room, "room, second thought");
await room.keyboard.press("Enter");
check("“not yet” leaves it hidden", !(await room.locator("#ask").isVisible()) && pictures.length === 0);
await room.locator("#reveal").click();
await room.locator("#ask-yes").click();
await room.waitForSelector("#countdown:not([hidden])");
check("a countdown runs, and the picture is still hidden", pictures.length === 0);
await picture(room, "room-countdown");
await room.waitForFunction(() => document.getElementById("picture").naturalWidth > 500, undefined, { timeout: 10_000 });
await wait(2000);
await picture(room, "room-open");
await axe(room, "room, open");
check("the original stays away until it is asked for", !pictures.some((url) => url.includes("picture.jpg")));

// ---- whole
check("the last photo is taken", await send(room, whole));
await counted(room, 80);
check("whole: it says so, and what comes next", (await room.locator("#complete").innerText()) !== "" && (await room.locator("#next").innerText()) !== "");
await room.locator("#beside").click();
await room.waitForFunction(() => document.getElementById("original-picture").naturalWidth > 200);
await room.waitForFunction(() => document.getElementById("picture").complete);
await wait(2600);
const sizes = await room.evaluate(() => ["picture", "original-picture"].map((id) => document.getElementById(id).getBoundingClientRect()).map((box) => [Math.round(box.width), Math.round(box.height), Math.round(box.top)]));
check("mural and original stand beside each other at the same size", JSON.stringify(sizes[0]) === JSON.stringify(sizes[1]), JSON.stringify(sizes));
await picture(room, "room-beside");
await axe(room, "room, beside the original");
await room.locator("#hide").click();
check("hidden again", (await room.locator("#picture").isHidden()) && (await room.locator("#original").isHidden()));

// ---- full screen
check("full screen is offered", await room.locator("#full").isVisible());
await room.locator("#full").click();
await room.waitForFunction(() => document.fullscreenElement !== null);
check("full screen can be left by its button", await (async () => {
  await room.locator("#full").click();
  await room.waitForFunction(() => document.fullscreenElement === null);
  return true;
})());

// ---- other places
const still = await pageOf(PORT, { ...WIDE, reducedMotion: "reduce", colorScheme: "dark" });
await still.goto(links.room);
await still.waitForFunction(() => document.querySelectorAll("#cover > .hangs").length === 80);
check("nothing moves where motion is not wanted", await still.evaluate(() => document.getAnimations().length === 0));
await picture(still, "room-dark");
await axe(still, "room, dark");
const narrow = await pageOf(PORT, { viewport: { width: 480, height: 860 } });
await narrow.goto(links.room);
await narrow.waitForFunction(() => document.getElementById("hang").textContent !== "");
await picture(narrow, "room-narrow");
await fits(narrow, "room, narrow");
const old = await pageOf(PORT, { viewport: { width: 1024, height: 768 } });
await old.goto(links.room);
await old.waitForFunction(() => document.getElementById("hang").textContent !== "");
await fits(old, "room, an old projector");
await stop();
await old.waitForSelector("#lost:not([hidden])", { timeout: 15_000 });
check("old news is marked as old, with its time", /\d{1,2}[:.]\d{2}/.test(await old.locator("#lost").innerText()), await old.locator("#lost").innerText());
await picture(old, "room-old");
await axe(old, "room, without the laptop");
writeFileSync(join(event, "event.toml"), readFileSync(join(event, "event.toml"), "utf8").replace('language = "en"', 'language = "es"'));
run("print", event);
links = await start(event, PORT);
const spanish = await pageOf(PORT, WIDE);
await spanish.goto(links.room);
await spanish.waitForFunction(() => document.getElementById("hang").textContent !== "");
await picture(spanish, "room-spanish");
await axe(spanish, "room, Spanish");
check("Spanish whole", (await spanish.evaluate(() => document.documentElement.lang)).startsWith("es") && !/\bsquares?\b|picture/i.test(await spanish.locator("body").innerText()));
await end();
