import { LETTERS, textRoom, type Paper } from "./paper";
import { spread } from "./spread";

/** A row of the key under a drawing. */
export interface KeyRow {
  letter: string;
  name: string;
  size: string;
  /** What the table calls the size. */
  of: string;
}

/** What has no room where it belongs: it stands at the end of a leader, or in a key under the drawing. */
export class Asides {
  private readonly leaders: { x: number; y: number; text: string }[] = [];
  private readonly rows = new Map<string, KeyRow>();
  /** Cuts whose numbers have no room at their edges. */
  readonly unnumbered: number[] = [];

  /** The letter under which the key has a piece; equal pieces share it. */
  letter(name: string, size: string, of: string): string {
    const known = this.rows.get(`${size}|${name}`);
    if (known) return known.letter;
    const letter = lettersOf(this.rows.size + 1);
    this.rows.set(`${size}|${name}`, { letter, name, size, of });
    return letter;
  }

  get key(): KeyRow[] {
    return [...this.rows.values()];
  }

  /** A letter at the end of a leader from a point. */
  lead(x: number, y: number, text: string): void {
    this.leaders.push({ x, y, text });
  }

  /** Writes all that leaders lead to, one above the other. */
  write(paper: Paper, x: number): void {
    const leaders = [...this.leaders].sort((a, b) => a.y - b.y || b.x - a.x);
    const places = spread(
      leaders.map(({ y }) => y),
      textRoom("0", LETTERS.small).height,
    );
    leaders.forEach((leader, i) => {
      paper.circle("thin", leader.x, leader.y, 0.3, "dot");
      paper.line("thin", [leader.x, leader.y], [x + 3, places[i]!]);
      paper.label(leader.text, x + 3.5, places[i]!, { anchor: "start", size: LETTERS.small });
    });
  }
}

/** a, b … z, aa: small, for capitals name pieces that are cut further. */
function lettersOf(number: number): string {
  const rest = Math.floor((number - 1) / 26);
  return (rest > 0 ? lettersOf(rest) : "") + String.fromCharCode(97 + ((number - 1) % 26));
}
