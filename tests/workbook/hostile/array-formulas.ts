import { alone, type Tried } from "./hostile-case";
import { STEPS, INTO_ITSELF, ARRAY } from "./reasons";

const LONG = "a".repeat(32_767);

/** Patterns, arrays and functions that call themselves. */
export const ARRAY_FORMULAS = (
  [
    ["stars on a long text, counted", `COUNTIF(B1,"*a*a*a*a*b")`, 0, { B1: LONG }],
    ["stars and question marks in turn", `COUNTIF(B1,"${"*?".repeat(100)}b")`, 0, { B1: LONG }],
    ["a long pattern on a long text", `COUNTIF(B1,"${"*a".repeat(120)}")`, 1, { B1: LONG }],
    ["stars that are looked up", `_xlfn.XLOOKUP("*a*a*a*b",B1:B2,C1:C2,"none",2)`, "none", { B1: LONG, B2: LONG }],
    ["stars that are searched for", `SEARCH("*a*a*a*a*b",B1)`, "#VALUE!", { B1: LONG }],
    [
      "a pattern by a regular expression that goes back and forth",
      `_xlfn.REGEXTEST(B1,"(a+)+$")`,
      /^kept: /,
      { B1: `${LONG.slice(1)}b` },
    ],
    ["an array as large as the grid", "{=_xlfn.EXPAND(1,1048576,16384)", ARRAY],
    ["a unit matrix beyond all measure", "{=_xlfn.MUNIT(1E9)", ARRAY],
    ["a negative unit matrix", "{=_xlfn.MUNIT(-1)", "#VALUE!"],
    ["a sequence of a sequence's products", "{=SUM(_xlfn.SEQUENCE(100000)*_xlfn.SEQUENCE(,16384))", ARRAY],
    [
      "a stack that doubles",
      "{=SUM(_xlfn.REDUCE(1,_xlfn.SEQUENCE(64),_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlfn.VSTACK(_xlpm.a,_xlpm.a))))",
      /^kept: /,
    ],
    ["more rows taken than there are", "{=SUM(_xlfn.TAKE(_xlfn.SEQUENCE(3),1E300))", 6],
    ["as many cells dropped as there are", "{=_xlfn.DROP(_xlfn.SEQUENCE(3),3)", "#CALC!"],
    [
      "a function that calls itself twice",
      "{=_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.f,_xlpm.n,_xlpm.f(_xlpm.f,_xlpm.n+1)+_xlpm.f(_xlpm.f,_xlpm.n+1)),_xlpm.f(_xlpm.f,1))",
      INTO_ITSELF,
    ],
    [
      "a function that calls itself twice, forty deep",
      "{=_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.f,_xlpm.n,IF(_xlpm.n>40,1,_xlpm.f(_xlpm.f,_xlpm.n+1)+_xlpm.f(_xlpm.f,_xlpm.n+1))),_xlpm.f(_xlpm.f,1))",
      STEPS,
    ],
    [
      "a million turns",
      "{=_xlfn.REDUCE(0,_xlfn.SEQUENCE(1000000),_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+SUM(_xlfn.SEQUENCE(1000))))",
      STEPS,
    ],
    [
      "an array made by a function, cell by cell",
      "{=SUM(_xlfn.MAKEARRAY(1000,2000,_xlfn.LAMBDA(_xlpm.r,_xlpm.c,SUM(_xlfn.SEQUENCE(1000)))))",
      STEPS,
    ],
  ] as Tried[]
).map(alone);
