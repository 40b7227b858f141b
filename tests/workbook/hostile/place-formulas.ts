import { alone, type Tried } from "./hostile-case";
import { CIRCLE } from "./reasons";

/** Numbers, ranges and places beyond the grid. */
export const PLACE_FORMULAS = (
  [
    ["an exponent beyond numbers", "1E999", "#NUM!"],
    ["a column of no grid", "SUM(ZZZ1:ZZZ9)", "#NAME?"],
    ["all rows, against all columns", "{=SUM((1:1048576=B1)*1)", CIRCLE],
    ["rows of a range that ends far below what is used", "{=SUM(ROW(B1:B50000))", 1_250_025_000],
    ["columns of a range that ends far right of what is used", "{=SUM(COLUMN(B1:XFD1))", 134_225_919],
    ["how many rows whole columns have", "ROWS(B:B)*COLUMNS(1:1)", 17_179_869_184],
    ["blanks of whole columns", "COUNTBLANK(B:XFD)", 17_178_820_608],
    ["a look at whole columns for what is not there", `{=_xlfn.XMATCH("no",B:B)`, "#N/A", { B1: "yes" }],
    ["a look at whole columns from their end", "{=_xlfn.XMATCH(2,B:B,0,-1)", 3, { B1: 1, B3: 2 }],
    ["an indirect reference to itself", `INDIRECT("A1")`, CIRCLE],
    ["an offset from itself", "OFFSET(A1,0,0)", CIRCLE],
    ["an offset beyond the grid", "SUM(OFFSET(B1,1E300,0))", "#REF!"],
    ["an offset as large as the grid", "SUM(OFFSET(B1,0,0,1048576,16383))", 0],
    ["an address far beyond the grid", "ADDRESS(1E300,1)", "#VALUE!"],
    ["a text as a number, of 32,767 digits", 'VALUE(REPT("9",32767))', "#VALUE!"],
    ["a format of 32,767 signs", "TEXT(1.5,B1)", /^0{32766}2$/, { B1: "0".repeat(32_767) }],
    ["a sum of a plan that is no table", `{=_xldudf_DRAWER_PLAN(_xlfn.SEQUENCE(1000,1000))`, "#VALUE!"],
  ] as Tried[]
).map(alone);
