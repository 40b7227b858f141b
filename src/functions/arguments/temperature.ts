import { Fault, naming, orElse } from "../../core/length";
import { airTemperature, type Scale } from "../../core/wood";
import { isBlank, readCell, readMarked } from "../cells";
import type { Argument } from "./argument";
import { word } from "./word";

/** The scale of plain temperatures. */
export const scale = (name: string): Argument<Scale> =>
  word<Scale>(name, ["F", "C"], { fahrenheit: "F", celsius: "C" });

/**
 * A temperature of the air, in °C. A text may name its own scale; a plain number is in that of another argument.
 * @param place of that argument, which stands to the right: where it is no scale, that is its own fault
 */
export const temperature = (name: string, place: number): Argument<number> => ({
  name,
  read: (raw, call) => {
    const usual = orElse(
      () => scale("scale").read(call.raw[place], call),
      () => "F" as const,
    );
    return naming(name, () => {
      const cell = readCell(raw);
      if (cell.value === 0) throw new Fault("zero.needed", { mark: usual });
      if (isBlank(cell.value)) throw new Fault("argument.blank", { wanted: `temperature in °${usual}` });
      const { number, mark } = readMarked(cell, `°${usual}`);
      const named = /^°?([fc])$/.exec(mark)?.[1]?.toUpperCase() as Scale | undefined;
      if (mark !== "" && !named) throw new Fault("measure.unreadable", { received: cell.value, plain: `°${usual}` });
      return airTemperature(number, named ?? usual);
    });
  },
});
