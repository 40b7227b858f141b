import { fileURLToPath } from "node:url";
import { writeCommand } from "./write";

/** Part of `npm run build`: writes the command into dist/bin/. */
await writeCommand(fileURLToPath(new URL("../../../dist/bin/", import.meta.url)));
