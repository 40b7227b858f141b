import type { Ordinary } from "../kinds";
import { toNumber, toText } from "../coercion";
import { CellError, fail } from "../values";
import { scalarOf } from "./reading";

const VALUES: Record<string, number> = { I: 1, V: 5, X: 10, L: 50, C: 100, D: 500, M: 1000 };

/** Roman numerals. */
export const roman: Record<string, Ordinary> = {
  /** A numeral before a larger one is taken away, whatever it is. */
  ARABIC: {
    signature: "V",
    call([value]) {
      const text = toText(scalarOf(value));
      if (text instanceof CellError) return text;
      const [, sign, letters] = /^(-?)(.*)$/s.exec(text.trim().toUpperCase())!;
      const numbers = Array.from(letters!, (letter) => VALUES[letter]);
      if (numbers.includes(undefined) || text.length > 255) return fail("#VALUE!");
      const total = numbers.reduce<number>(
        (sum, number, i) => sum + (number! < (numbers[i + 1] ?? 0) ? -number! : number!),
        0,
      );
      return (sign ? -total : total) + 0;
    },
  },
  ROMAN: {
    signature: "V",
    call([value, form]) {
      const number = toNumber(scalarOf(value));
      const mode = form === true || form === undefined ? 0 : form === false ? 4 : toNumber(scalarOf(form));
      if (number instanceof CellError) return number;
      if (mode instanceof CellError) return mode;
      const [whole, steps] = [Math.trunc(number), Math.trunc(mode)];
      return number < 0 || whole > 3999 || steps < 0 || steps > 4 ? fail("#VALUE!") : numeral(whole, steps);
    },
  },
};

const LETTERS = "MDCLXVI";

/** Each form beyond the classic one takes a smaller letter away from a larger by one step more: XCIX, VCIV, IC. */
function numeral(value: number, steps: number): string {
  let text = "";
  for (let place = 0; place < LETTERS.length; place += 2) {
    const digit = Math.floor(value / worth(place));
    if (digit % 5 !== 4) {
      text += (digit > 4 ? LETTERS[place - 1]! : "") + LETTERS[place]!.repeat(digit % 5);
      value %= worth(place);
      continue;
    }
    const larger = digit === 4 ? place - 1 : place - 2;
    let smaller = place;
    for (let i = 0; i < steps && smaller < LETTERS.length - 1; i++) {
      if (worth(larger) - worth(smaller + 1) > value) break;
      smaller++;
    }
    text += LETTERS[smaller]! + LETTERS[larger]!;
    value += worth(smaller) - worth(larger);
  }
  return text;
}

function worth(place: number): number {
  return VALUES[LETTERS[place]!]!;
}
