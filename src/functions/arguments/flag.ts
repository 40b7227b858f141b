import { Fault } from "../../core/length";
import { scalar, type Argument } from "./argument";
import { isEmpty } from "../cells";

/** A TRUE or FALSE; blank, and the number 0 that an empty cell may give, is the default. */
export const flag = (name: string, fallback: boolean): Argument<boolean> =>
  scalar(name, ({ value }) => {
    if (isEmpty(value)) return fallback;
    if (typeof value === "boolean") return value;
    if (value === 1) return true;
    if (typeof value === "string" && /^(true|false)$/i.test(value.trim())) return /true/i.test(value);
    throw new Fault("flag.wrongType", { received: value });
  });
