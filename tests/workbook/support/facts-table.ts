import { markdownTable } from "../../../src/build/generated";
import { PROVEN_FUNCTIONS } from "../../../src/workbook/engine/proven";

/** What the table says of a formula that the spreadsheet program worked out. */
export interface Counted {
  functions: readonly string[];
  /** Why it was not worked out, where it was not. */
  kept?: string;
  /** Why it came out otherwise, where it did. */
  differs?: string;
}

/**
 * What is known of each native function, as a table of Markdown, and of those that are left alone as a paragraph.
 * @param confirmed the functions of each formula that LibreOffice confirms
 */
export function factsTable(facts: readonly Counted[], confirmed: readonly (readonly string[])[]): string {
  const rows = [...PROVEN_FUNCTIONS].sort().map((name) => {
    const of = facts.filter(({ functions }) => functions.includes(name));
    const own = of.filter(({ functions }) => functions.every((called) => PROVEN_FUNCTIONS.has(called)));
    const met = of.filter(({ kept, differs }) => kept === undefined && differs === undefined);
    const twins = confirmed.filter((functions) => functions.includes(name));
    return [`\`${name}\``, count(met), count(own.filter(({ kept }) => kept)), count(twins), reasons(own)];
  });
  return `${markdownTable([HEADINGS, ...rows])}\n${leftAlone(facts)}\n`;
}

const HEADINGS = ["Function", "Met", "Kept", "LibreOffice", "Why kept, or other"];

const count = (all: readonly unknown[]): string => (all.length === 0 ? "" : all.length.toLocaleString("en"));

/** Each once, with how often it holds where that is more than once. */
function reasons(facts: readonly Counted[]): string {
  const times = new Map<string, number>();
  for (const { kept, differs } of facts) {
    const reason = kept ?? differs;
    if (reason !== undefined) times.set(reason, (times.get(reason) ?? 0) + 1);
  }
  return [...times].map(([reason, many]) => (many > 1 ? `${reason} (${many})` : reason)).join("; ");
}

/** Functions that the stored formulas call and that are not worked out here: their formulas keep their values. */
function leftAlone(facts: readonly Counted[]): string {
  const names = new Set(facts.flatMap(({ kept, functions }) => (kept === undefined ? [] : functions)));
  const isUnknown = (name: string): boolean =>
    facts.some(({ kept }) => kept === `calls ${name}, which is not known here`);
  const unproven = [...names].filter((name) => !PROVEN_FUNCTIONS.has(name) && !isUnknown(name)).sort();
  return `Left alone, with their values: ${unproven.map((name) => `\`${name}\``).join(", ")}.`;
}
