import { alone, times, type Tried } from "./hostile-case";

const LONG = "a".repeat(32_767);

/** Texts and arrays that grow. */
export const TEXT_FORMULAS = (
  [
    ["a text repeated", `LEN(REPT(REPT("a",30000),30000))`, /^kept: makes a text of 900000000 characters with REPT/],
    [
      "a variable that doubles a text",
      `{=LEN(_xlfn.LET(${times(40, (i) => `_xlpm.v${i + 1},_xlpm.v${i}&_xlpm.v${i},`).replace("_xlpm.v0&_xlpm.v0", '"ab"')}_xlpm.v40))`,
      "#VALUE!",
    ],
    [
      "a variable that doubles an array",
      `{=SUM(_xlfn.LET(_xlpm.v0,_xlfn.SEQUENCE(9),${times(40, (i) => `_xlpm.v${i + 1},_xlfn.VSTACK(_xlpm.v${i},_xlpm.v${i}),`)}_xlpm.v40))`,
      /^kept: /,
    ],
    ["joined texts", `{=LEN(_xlfn.TEXTJOIN(REPT("-",32767),TRUE,_xlfn.SEQUENCE(1000)))`, "#VALUE!"],
    ["texts put together", `{=LEN(_xlfn.CONCAT(REPT("a",_xlfn.SEQUENCE(30000))))`, /^kept: |#VALUE!/],
    [
      "replacements that grow",
      'LEN(SUBSTITUTE(B1,"a",B1))',
      /^kept: makes a text of 1073676289 characters with SUBSTITUTE/,
      { B1: LONG },
    ],
    ["a text split into as many pieces as it has letters", `{=COUNTA(_xlfn.TEXTSPLIT(REPT("a,",16000),","))`, 16_001],
  ] as Tried[]
).map(alone);
