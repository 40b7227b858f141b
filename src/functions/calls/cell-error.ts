import { Fault, type Unit } from "../../core/length";
import { IncomingError } from "../cells";
import { message } from "../words";

/** Codes that mean "nothing fits": they become #N/A, all others #VALUE!. */
const NOT_AVAILABLE = new Set([
  "slide.noneFits",
  "slide.noneFitsBox",
  "sheets.noStockFor",
  "sheets.noStock",
  "sheets.partTooLarge",
  "sheets.groupTooLarge",
  "sheets.noneAvailable",
  "sheets.stockExhausted",
  "tipping.none",
]);

/**
 * The one place where a fault becomes a cell error. The host shows messages for #VALUE! and #N/A alone.
 * @param thrown whatever a function's body threw
 */
export function cellError(thrown: unknown, unit: Unit): CustomFunctions.Error {
  if (thrown instanceof IncomingError) return handedOn(thrown.cellError);
  if (thrown instanceof Fault) {
    const { notAvailable, invalidValue } = CustomFunctions.ErrorCode;
    return new CustomFunctions.Error(
      NOT_AVAILABLE.has(thrown.code) ? notAvailable : invalidValue,
      message(thrown, unit),
    );
  }
  // A mistake of ours must neither take the host down nor pass for a result.
  return new CustomFunctions.Error(
    CustomFunctions.ErrorCode.invalidValue,
    `This could not be worked out (${String(thrown)}). Please report it, with the formula.`,
  );
}

function handedOn(text: string): CustomFunctions.Error {
  const codes = CustomFunctions.ErrorCode;
  const known = [
    codes.notAvailable,
    codes.invalidValue,
    codes.invalidNumber,
    codes.divisionByZero,
    codes.nullReference,
  ];
  const code = known.find((candidate) => String(candidate) === text);
  if (code) return new CustomFunctions.Error(code);
  return new CustomFunctions.Error(codes.invalidValue, `A cell that this formula reads holds the error ${text}.`);
}
