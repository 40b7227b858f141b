import { alone, type Tried } from "./hostile-case";
import { DEEP, INTO_ITSELF, TOO_LONG, UNREAD } from "./reasons";

/** Formulas that are long or deep. */
export const LONG_FORMULAS = (
  [
    ["parentheses 10,000 deep", `${"(".repeat(10_000)}1${")".repeat(10_000)}`, DEEP],
    ["IF 10,000 deep", `${"IF(1,".repeat(10_000)}1${")".repeat(10_000)}`, DEEP],
    ["10,000 signs", `${"-".repeat(10_000)}1`, DEEP],
    ["10,000 percent signs", `1${"%".repeat(10_000)}`, INTO_ITSELF],
    ["10,000 spill marks", `B1${"#".repeat(10_000)}`, INTO_ITSELF],
    ["10,000 calls in a row", `_xlfn.LAMBDA(_xlpm.x,1)${"(1)".repeat(10_000)}`, INTO_ITSELF],
    ["10,000 spans", `SUM(B1${":B1".repeat(10_000)})`, INTO_ITSELF],
    ["10,000 unions", `SUM((B1${",B1".repeat(10_000)}))`, INTO_ITSELF],
    ["10,000 intersections", `SUM(B1${" B1".repeat(10_000)})`, INTO_ITSELF],
    ["a sum of 10,000 terms", `1${"+1".repeat(10_000)}`, 10_001],
    ["a sum of 100,000 terms", `1${"+1".repeat(100_000)}`, TOO_LONG],
    ["10,000 texts put together", `LEN(""${'&"ab"'.repeat(10_000)})`, 20_000],
    ["10,000 comparisons", `1${"=1".repeat(10_000)}`, false],
    ["powers, 10,000 in a row", `1${"^1".repeat(10_000)}`, 1],
    [
      "an array constant of 300,000 items",
      `{=SUM({${Array.from({ length: 300_000 }, (_, i) => i % 7).join(",")}})`,
      TOO_LONG,
    ],
    ["10,000 arguments", `SUM(1${",1".repeat(9_999)})`, /^kept: |^10000$/],
    ["a formula of 5 MB", `1${"+1".repeat(2_500_000)}`, TOO_LONG],
    ["a formula of 5 MB of texts", `LEN("${'""'.repeat(2_500_000)}")`, TOO_LONG],
    ["brackets that never end", `Table[${"[".repeat(1_000_000)}`, TOO_LONG],
    ["60,000 quotes that never end", `"${'""'.repeat(30_000)}`, UNREAD],
    ["60,000 apostrophes that never end", `'${"''".repeat(30_000)}`, UNREAD],
    ["60,000 blanks", `1${" ".repeat(60_000)}+1`, 2],
    ["60,000 digits", "1".repeat(60_000), "#NUM!"],
    ["60,000 letters", "n".repeat(60_000), "#NAME?"],
    ["60,000 letters and points", "a.".repeat(30_000), "#NAME?"],
    ["60,000 brackets", `Table[${"[".repeat(60_000)}`, UNREAD],
  ] as Tried[]
).map(alone);
