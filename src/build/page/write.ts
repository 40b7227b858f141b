import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { buildPage } from "./build";
import { staticFiles } from "./static";

const folder = fileURLToPath(new URL("../../../dist/workbook/", import.meta.url));

/** Part of `npm run build`: writes the embedded workbook's page into dist/workbook/. */
rmSync(folder, { recursive: true, force: true });
for (const [name, bytes] of await staticFiles(await buildPage())) {
  mkdirSync(dirname(folder + name), { recursive: true });
  writeFileSync(folder + name, bytes);
}
