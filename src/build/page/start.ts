import { buildPage } from "./build";
import { servePage } from "./server";

const PORT = 4680;

/** `npm start`: builds the page and serves it until it is stopped. */
const { address } = await servePage(await buildPage(), Number(process.env.PORT ?? PORT));
console.log(`Groove & Reveal is at ${address}`);
