/** What --help prints. */
export const HELP = `Makes pages for the shop from a workbook that plans drawers.

  npm run shop-pages -- BOOK.xlsx -o PAGES.pdf
  npm run shop-pages -- BOOK.xlsx --svg FOLDER

  -o, --output FILE     PAGES.pdf, printed by a browser that is installed here, or PAGES.html,
                        which needs none and is for a phone
      --paper PAPER     letter (the usual) or a4
      --svg FOLDER      every drawing of the job as an SVG file
  -h, --help            print this

The job is read from the workbook's own formulas, as DRAWER.PLAN and DRAWER.CUTS, worked
out anew. Print at 100 %, and lay a ruler on the check ruler before a story stick is used.

Exit code
  0  everything was written
  2  the command, the workbook or its job cannot be used, or no browser is found
`;
