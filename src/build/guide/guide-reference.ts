import { readFileSync } from "node:fs";
import { marked, type Token, type Tokens } from "marked";
import { GUIDE_PAGES, pageAddress, type GuideReference, type GuideTerm } from "../../guide/index";
import { guideFolder } from "./files";
import { anchorOf } from "./links";

/** What a search finds in the guide: its headings, and the tables that explain words, by the first cell of their header. */
export function guideReference(): GuideReference {
  const found: GuideReference = { words: [], headings: [], sections: [], elsewhere: [] };
  for (const { name, title } of GUIDE_PAGES) {
    // What is written by the build is found where it comes from.
    const text = readFileSync(`${guideFolder()}pages/${name}.md`, "utf8").replace(GENERATED, "");
    let heading = "";
    for (const token of marked.lexer(text)) {
      const address = pageAddress(name) + (heading ? `#${anchorOf(heading)}` : "");
      if (token.type === "heading") {
        const { depth, text: words } = token as Tokens.Heading;
        heading = depth === 1 ? "" : words;
        const place = heading
          ? { title: plain(token), address: `${pageAddress(name)}#${anchorOf(words)}` }
          : { address };
        found.sections.push({ page: title, text: "", ...place });
      } else if (token.type === "table") {
        readTable(token as Tokens.Table, heading, address, found);
      } else {
        const section = found.sections.at(-1)!;
        if (section.text === "" && ["paragraph", "list", "blockquote"].includes(token.type))
          section.text = beginning(plain(token));
      }
    }
  }
  return found;
}

const GENERATED = /<!-- (\w+) -->[^]*?<!-- \/\1 -->/g;

function readTable({ header, rows }: Tokens.Table, heading: string, address: string, found: GuideReference): void {
  const [kind] = header.map(({ text }) => text);
  const terms = rows.map(([first, second]): GuideTerm => {
    const label = words(first!.tokens);
    return { label, names: namesIn(first!.tokens, label), meaning: words(second!.tokens), address };
  });
  if (kind === "Word") found.words.push(...terms);
  if (kind === "Elsewhere")
    for (const [i, { names }] of terms.entries()) {
      const here = rows[i]![1]!.tokens;
      for (const said of names) found.elsewhere.push([said, namesIn(here, words(here))]);
    }
  const [, table] = /^The tables? `(\w+)`/.exec(heading) ?? [];
  if (table && (kind === "Heading" || kind === "name"))
    found.headings.push(...terms.map((term) => ({ ...term, table })));
}

/** What is set as a name; where nothing is, each of a list. */
function namesIn(tokens: readonly Token[], label: string): string[] {
  const names = tokens.filter(({ type }) => type === "codespan").map(plain);
  return names.length > 0 ? names : label.split(/, | and /);
}

/** A token's text without its marks. */
const plain = (token: Token): string => {
  if ("tokens" in token && token.tokens) return words(token.tokens);
  if (token.type === "list") return (token as Tokens.List).items.map(plain).join(" ");
  return token.type === "space" ? " " : String("text" in token ? token.text : token.raw);
};

const words = (tokens: readonly Token[]): string => tokens.map(plain).join("").replace(/\s+/g, " ").trim();

/** So much of a text as tells what it is about, to the end of a word. */
const beginning = (text: string): string =>
  text.length <= MOST ? text : `${text.slice(0, MOST).replace(/\W+\w*$/, "")} …`;

const MOST = 180;
