// What the browser checks count: each check says its name and whether it holds; the end says how many did.
let passed = 0;
let failed = 0;
export const check = (name, holds, seen = "") => {
  if (holds) passed += 1;
  else failed += 1;
  console.log(`${holds ? "ok    " : "FAILED"} ${name}${holds || seen === "" ? "" : `: ${seen}`}`);
};
export const wait = (ms) => new Promise((done) => setTimeout(done, ms));
// Says the tally and ends the program: with 1 where a check failed.
export const finish = () => {
  console.log(`${passed} passed, ${failed} failed`);
  process.exit(failed === 0 ? 0 : 1);
};
