// All invented cases answered in Node and in WebKit, digit for digit. Ends with 1 where one differs.
import { isDeepStrictEqual } from "node:util";
import { exampleNames, figuresOfBoth } from "../webkit/figures.ts";

let horses = 0;
for await (const { name, horse, node, webkit } of figuresOfBoth(exampleNames())) {
  const isSame = isDeepStrictEqual(node, webkit);
  console.log(`${isSame ? "the same" : "DIFFERS "}  ${name}, horse ${horse + 1}`);
  if (!isSame) process.exitCode = 1;
  horses++;
}
console.log(`${horses} horses`);
