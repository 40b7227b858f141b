import { buildPage } from "./build";
import { readPort } from "./port";
import { servePage } from "./server";

/** `npm start`: builds the page and serves it until it is stopped. */
try {
  const port = readPort(process.env.PORT);
  const { address } = await servePage(await buildPage(), port);
  const taken = port !== 0 && !address.endsWith(`:${port}/`) ? `Port ${port} is not to be had. ` : "";
  console.log(`${taken}Groove & Reveal is at ${address}`);
} catch (error) {
  console.error(`The page cannot be served: ${(error as Error).message}`);
  process.exitCode = 1;
}
