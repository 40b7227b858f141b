import type { Ranges } from "../host/host";
import { MESSAGES } from "../messages";
import type { CallArgument } from "../../shop-pages/index";

/** What a call is given, as the spreadsheet hands it over; or why it cannot be told. */
export async function readArguments(
  ranges: Ranges,
  args: readonly CallArgument[],
  sheet: string,
): Promise<{ raw: unknown[] } | { why: string }> {
  const raw: unknown[] = [];
  for (const argument of args) {
    if ("other" in argument) return { why: MESSAGES.notRead(argument.other) };
    if ("value" in argument) raw.push(argument.value);
    else {
      const values = await ranges.values({ sheet, ...argument.range });
      if (!values) return { why: MESSAGES.noRange(argument.range.address) };
      // One cell is no range to a function.
      raw.push(values.length === 1 && values[0]!.length === 1 ? values[0]![0] : values);
    }
  }
  return { raw };
}
