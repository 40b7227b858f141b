import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

/** British spellings by their stems; words that are spelled so on both sides of the ocean are not caught. */
const BRITISH = new RegExp(
  [
    "\\b(un|re|dis|in)?(col|fav|lab|neighb|hon|harb|hum|rum|vap|od|behavi|flav|arm|endeav|parl)our(?!ous|iz)",
    "(milli|centi|kilo|\\b|_)metres?\\b",
    "\\b(centre|litre|fibre|theatre|calibre|lustre|catalogue|artefact|grey|gr[ae]yscale|plough|cheque|tyre|kerb)",
    "\\b(mould|smoulder|storey|draught|aluminium|sceptic|manoeuvr|judgement|per cent|misspelt|spelt|learnt|whilst|amongst|towards)",
    "\\b(licence|defence|offence|pretence|practis(e|ed|ing)\\b|analys(e|ed|ing)\\b|paralys)",
    "(organ|recogn|normal|initial|optim|minim|maxim|summar|serial|capital|real|special|util|visual|equal|character|parenthes|standard|priorit|penal|symbol|categor|memor|emphas|synchron|author|general|final|custom)is(e|ed|es|ing|ation)\\b",
    "(label|model|travel|cancel|level|signal|total|channel|tunnel|fuel|quarrel)l(ed|ing|er)\\b",
  ].join("|"),
  "i",
);

/** Where British words are read from a person, and what is spelled so by others. */
const READ = ["src/functions/cells/find-word.ts"];
const OF_OTHERS = /aria-labelledby|ariaLabelledBy/g;

describe("words are spelled as the American trade spells them", () => {
  const own = readdirSync("src", { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(ts|html|css|md)$/.test(name))
    .map((name) => `src/${name}`);
  const files = [...own, "README.md", "DEVELOPERS.md", "package.json"];

  test.each(files.filter((file) => !READ.includes(file)))("%s", (file) => {
    const lines = `${file}\n${readFileSync(file, "utf8")}`.split("\n");
    expect(lines.filter((line) => BRITISH.test(line.replace(OF_OTHERS, "")))).toEqual([]);
  });

  test.each(["The centre of a drawer", "millimetres", "labourLines", "one that is labelled", "parenthesised"])(
    "and %s is seen not to be",
    (words) => expect(words).toMatch(BRITISH),
  );

  test.each(["parameter", "otherwise", "the perimeter", "raised", "precise", "called", "the scale is gray"])(
    "while %s is",
    (words) => expect(words).not.toMatch(BRITISH),
  );
});
