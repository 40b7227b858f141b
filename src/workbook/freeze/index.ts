/** Copies of workbooks for whoever has none of our functions: a client, a tablet, another program. */
export { dateOf } from "./date";
export { freeze, type Stamp } from "./freeze";
