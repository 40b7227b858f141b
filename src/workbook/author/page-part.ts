import { escapeText } from "../xlsx/xml";
import type { PageDefinition } from "./definition";

/** What stands at a worksheet's head so that it is shrunk to its pages at all. */
export const PAGE_HEAD = '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>';

/** How a worksheet is printed: the end of its part. */
export function pageXml(
  { orientation, paper, onePage, footer }: PageDefinition = { orientation: "landscape" },
): string {
  const size = paper ? ` paperSize="${PAPERS[paper]}"` : "";
  return (
    '<printOptions horizontalCentered="1"/>' +
    '<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>' +
    `<pageSetup${size} orientation="${orientation}" fitToWidth="1" fitToHeight="${onePage ? 1 : 0}"/>` +
    (footer ? `<headerFooter><oddFooter>${escapeText(footer)}</oddFooter></headerFooter>` : "")
  );
}

/** Numbers of paper sizes (ECMA-376, 18.3.1.63). */
const PAPERS = { letter: 1, A4: 9 };
