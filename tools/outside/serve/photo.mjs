// Photos for the browser checks.
import { readFileSync, writeFileSync } from "node:fs";

// A JPEG file without its metadata (APP1), by which a made photo is known: for the program it is a real one.
export const asReal = (file) => {
  const made = readFileSync(file);
  const kept = [made.subarray(0, 2)];
  let at = 2;
  while (made[at + 1] !== 0xda) {
    const end = at + 2 + made.readUInt16BE(at + 2);
    if (made[at + 1] !== 0xe1) kept.push(made.subarray(at, end));
    at = end;
  }
  writeFileSync(file, Buffer.concat([...kept, made.subarray(at)]));
  return file;
};
