import { Fault } from "../../core/length";
import { findSpecies, type Cut, type Species } from "../../core/wood";
import { isEmpty } from "../cells";
import { scalar, type Argument } from "./argument";
import { word } from "./word";

/** A wood whose movement is published. */
export const species = (name: string): Argument<Species> =>
  scalar(name, ({ value: received }) => {
    if (isEmpty(received))
      throw new Fault("argument.blank", { wanted: "species, such as cherry or white oak", received });
    if (typeof received !== "string") throw new Fault("text.wrongType", { received });
    return findSpecies(received);
  });

export const cut = (name: string): Argument<Cut> =>
  word<Cut>(name, ["flat", "quarter"], {
    "flat sawn": "flat",
    "plain sawn": "flat",
    "quarter sawn": "quarter",
  });
