import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { bundled } from "../bundled";
import { LARGE } from "./cases";

/** Seconds and memory of large workbooks, each in a process of its own. Arguments: names of cases; none is all. */
export const benchLarge = (args: readonly string[] = []): Promise<void> =>
  bundled(new URL("child.ts", import.meta.url), (run, folder) => {
    for (const name of args.length > 0 ? args : Object.keys(LARGE)) {
      const { what, make, way, target } = LARGE[name]!;
      const file = join(folder, `${name}.xlsx`);
      writeFileSync(file, make());
      const came = JSON.parse(run(way, file)) as Took;
      const wanted = [`${target.seconds} s`, ...(target.megabytes ? [`${target.megabytes} MB`] : [])].join(", ");
      const time = `${came.seconds.toFixed(2)} s (${came.processor.toFixed(2)} s of the processor)`;
      console.log(`${what}: ${time}, ${came.megabytes.toFixed(0)} MB; target: ${wanted}`);
    }
  });

interface Took {
  seconds: number;
  processor: number;
  megabytes: number;
}
