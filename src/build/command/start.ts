import { chmodSync, mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { buildCommand } from "./build";

const folder = fileURLToPath(new URL("../../../dist/bin/", import.meta.url));

/** Part of `npm run build`: writes the command into dist/bin/. */
mkdirSync(folder, { recursive: true });
for (const [name, text] of await buildCommand()) writeFileSync(`${folder}${name}`, text);
chmodSync(`${folder}recalculate.mjs`, 0o755);
