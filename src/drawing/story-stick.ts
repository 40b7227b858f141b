import { mountingOf, type Hung, type PlannedOpening } from "../core/drawer";
import { showNumber, type Rational } from "../core/length";
import type { Drawing, LineKind } from "./drawing";
import { LETTERS, Paper, textRoom } from "./paper";
import { fullSize } from "./scale";
import { spread } from "./spread";

/** What a section may show of the stick's length: letter and A4 have room for it with a heading and the check ruler. */
const SECTION = { in: 7 * 25.4, mm: 175 } as const;
/** What its shortest section must show, in millimeters: the words where it is cut, and a mark. */
const LEAST = 12;
/** Across: from the stick's edge to the ends of its marks, to their names, and to its other edge. */
const ACROSS = { mark: 6, text: 9, edge: 42 } as const;

interface Mark {
  /** Millimeters above the floor. */
  at: number;
  text: string;
  of: string;
  name: string;
  line: LineKind;
}

/**
 * The mounting heights of one opening at full size, up from its floor: a stick to mark the case with, in sections that
 * are cut at their lines and joined end to end.
 */
export function storyStick(planned: PlannedOpening): Drawing[] {
  const { opening } = planned;
  const scale = fullSize(opening.unit);
  const marks = marksOf(planned, scale.of).sort((a, b) => a.at - b.at);
  const start = Math.min(0, marks[0]!.at);
  const end = marks[marks.length - 1]!.at;
  const most = SECTION[opening.unit];
  const count = Math.max(1, Math.ceil((end - start) / most - 1e-9));
  // A last section too short for its texts would be: then all are equally long.
  const long = count > 1 && end - start - (count - 1) * most < LEAST ? (end - start) / count : most;
  return Array.from({ length: count }, (_, i) => {
    const from = start + i * long;
    const to = Math.min(end, from + long);
    const here = marks.filter(({ at }) => at >= from - 1e-9 && at <= to + 1e-9);
    return section(here, {
      opening: opening.label,
      from,
      to,
      number: i + 1,
      count,
      tick: opening.unit === "in" ? 25.4 : 10,
    });
  });
}

function marksOf(planned: PlannedOpening, size: (length: Rational) => number): Mark[] {
  const { opening } = planned;
  const mark = (height: Rational, of: string, name: string, line: LineKind = "visible"): Mark => ({
    at: size(height),
    text: showNumber(height, opening.unit),
    of,
    name,
    line,
  });
  return [
    { at: 0, text: "0", of: "floor", name: "floor", line: "visible" },
    mark(opening.least.height, `${opening.label} Opening height`, "top"),
    ...planned.falseFronts.map((hung) =>
      mark(hung.front.bottom.value, `${hung.label} Front bottom`, named(hung, "front"), "thin"),
    ),
    ...mountingOf(planned).flatMap(({ drawer, slideSpacer, pullHeight }) => [
      mark(drawer.front.bottom.value, `${drawer.label} Front bottom`, named(drawer, "front"), "thin"),
      mark(drawer.boxBottom.value, `${drawer.label} Box bottom`, named(drawer, "box"), "thin"),
      ...(slideSpacer ? [mark(slideSpacer.value, `${drawer.label} Slide spacer`, named(drawer, "slide edge"))] : []),
      ...(drawer.slideCenterline
        ? [mark(drawer.slideCenterline.value, `${drawer.label} Slide centerline`, named(drawer, "slide mid"))]
        : []),
      ...(pullHeight ? [mark(pullHeight.value, `${drawer.label} Pull height`, named(drawer, "pull"), "thin")] : []),
    ]),
  ];
}

const named = ({ label }: Hung, what: string): string => `${label} ${what}`;

interface Section {
  opening: string;
  from: number;
  to: number;
  number: number;
  count: number;
  /** How far apart the ticks along the stick's other edge are. */
  tick: number;
}

function section(marks: readonly Mark[], { opening, from, to, number, count, tick }: Section): Drawing {
  const paper = new Paper();
  const y = (height: number): number => from - height;
  const [lower, upper] = [y(from), y(to)];
  paper.line("visible", [0, lower], [0, upper]);
  paper.line("thin", [ACROSS.edge, lower], [ACROSS.edge, upper]);
  for (let at = Math.ceil(from / tick - 1e-9) * tick; at <= to + 1e-9; at += tick) {
    paper.line("thin", [ACROSS.edge, y(at)], [ACROSS.edge - 2, y(at)]);
  }
  for (const [at, joint, away] of [
    [lower, number - 1, 1],
    [upper, number === count ? 0 : number, -1],
  ] as const) {
    paper.line("visible", [0, at], [ACROSS.edge, at]);
    if (joint > 0)
      paper.label(`cut here: joint ${joint}`, 0, at + away * 2.4, { anchor: "start", size: LETTERS.small });
  }
  const size = SIZES.find((size) => marks.length * textRoom("0", size).height <= to - from) ?? LETTERS.tiny;
  const { height } = textRoom("0", size);
  const places = settled(
    marks.map(({ at }) => y(at)),
    height,
    lower - height / 2,
    upper + height / 2,
  );
  marks.forEach(({ at, text, of, name, line }, i) => {
    const place = places[i]!;
    paper.line(line, [0, y(at)], [ACROSS.mark, y(at)]);
    paper.line("thin", [ACROSS.mark, y(at)], [ACROSS.text - 0.5, place]);
    const room = ACROSS.edge - 2.2 - ACROSS.text;
    paper.label(text, ACROSS.text, place, { anchor: "start", size, of, after: name, room });
  });
  const title = `Story stick of ${opening}${count > 1 ? `, section ${number} of ${count}` : ""}`;
  paper.label(count > 1 ? `${number} of ${count}` : "whole", 0, upper - 7, { anchor: "start", size: LETTERS.usual });
  paper.label(opening, 16, upper - 7, { anchor: "start", size: LETTERS.usual, room: ACROSS.edge - 16 });
  const said = marks.map(({ text, name }) => `${name} ${text}`).join("; ");
  return paper.finish(title, `Full size, from below: ${said}.`);
}

const SIZES = [LETTERS.small, LETTERS.number, LETTERS.tiny] as const;

/** Places for lines of text from the lowest up, as near to the wishes as can be between the section's ends. */
function settled(wished: readonly number[], apart: number, lowest: number, highest: number): number[] {
  const near = [...spread([...wished].reverse(), apart)].reverse();
  const up: number[] = [];
  near.forEach((wish, i) => up.push(Math.min(wish, i === 0 ? lowest : up[i - 1]! - apart)));
  const down: number[] = [];
  for (let i = up.length - 1; i >= 0; i--)
    down.unshift(Math.max(up[i]!, i === up.length - 1 ? highest : down[0]! + apart));
  return down;
}
