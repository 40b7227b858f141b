import { Marked } from "marked";
import { anchorOf, builtLink } from "./links";

/** A page's Markdown as HTML: headings have anchors, links lead to built pages, and a table that is too wide is moved sideways. */
export const htmlOf = (markdown: string): string => marked.parse(markdown.replace(COMMENTS, ""), { async: false });

/** What marks the parts that are written by the build, for whoever edits the page. */
const COMMENTS = /^<!--.*?-->\n/gms;

const marked = new Marked({
  walkTokens: (token) => {
    if (token.type === "link" || token.type === "image") token.href = builtLink(token.href);
  },
  renderer: {
    heading({ depth, tokens, text }) {
      return `<h${depth} id="${anchorOf(text)}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
    },
    table(token) {
      // A heading without words, which Markdown asks for, is none.
      const cell = ({ header, text, tokens }: (typeof token.header)[number]) => {
        const tag = header && text !== "" ? "th" : "td";
        return `<${tag}>${this.parser.parseInline(tokens)}</${tag}>`;
      };
      const row = (cells: typeof token.header) => `<tr>${cells.map(cell).join("")}</tr>\n`;
      const head = token.header.some(({ text }) => text !== "") ? `<thead>${row(token.header)}</thead>` : "";
      const table = `<table>${head}<tbody>${token.rows.map(row).join("")}</tbody></table>`;
      // A keyboard moves only what can be focused.
      return `<div class="wide" role="group" aria-label="Table" tabindex="0">${table}</div>\n`;
    },
  },
});
