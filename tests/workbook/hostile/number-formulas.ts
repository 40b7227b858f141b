import { alone, type Tried } from "./hostile-case";
import { STEPS, UNPROVEN } from "./reasons";

/** Calls that would run through numbers without an end. */
export const NUMBER_FORMULAS = (
  [
    ["working days for ever", "WORKDAY(45000,1E15)", STEPS],
    ["working days backward for ever", "WORKDAY(45000,-1E15)", STEPS],
    ["working days in a week without any", `WORKDAY.INTL(45000,5,"1111111")`, "#VALUE!"],
    ["months beyond the calendar", "EDATE(45000,1E9)", "#NUM!"],
    ["the end of a month beyond the calendar", "EOMONTH(45000,-1E300)", "#NUM!"],
    ["a least common multiple beyond whole numbers", "LCM(1E307,999999999)", "#NUM!"],
    ["a greatest common divisor of huge numbers", "GCD(1E300,3)", "#NUM!"],
    ["a factorial beyond numbers", "FACT(1E300)", "#NUM!"],
    ["a double factorial beyond numbers", "FACTDOUBLE(1E9)", UNPROVEN],
    ["combinations of huge numbers", "COMBIN(1E15,5E14)", "#NUM!"],
    ["repeated combinations of huge numbers", "_xlfn.COMBINA(1E15,1E14)", UNPROVEN],
    ["permutations of huge numbers", "PERMUT(1E15,5E14)", UNPROVEN],
    ["a binomial distribution that is summed up one by one", "_xlfn.BINOM.DIST(5E8,1E9,0.5,TRUE)", UNPROVEN],
    ["a Poisson distribution of huge numbers", "_xlfn.POISSON.DIST(1E9,1E9,TRUE)", UNPROVEN],
    ["Bessel functions of huge orders", "BESSELJ(1,1E9)", UNPROVEN],
    ["a Roman number beyond Roman numbers", "ROMAN(1E9)", "#VALUE!"],
    ["digits in a base, of a huge length", "_xlfn.BASE(1,2,1E9)", UNPROVEN],
    ["a power beyond numbers", "10^308*10", "#NUM!"],
    ["powers of powers", "9^9^9^9^9", "#NUM!"],
  ] as Tried[]
).map(alone);
