/** What --help prints. */
export const HELP = `Recalculates a workbook and writes its values, without a spreadsheet program.

  recalculate IN.xlsx -o OUT.xlsx
  recalculate --in-place BOOK.xlsx
  recalculate --values IN.xlsx -o COPY.xlsx

  -o, --output FILE  where the recalculated workbook goes; it may not be the input
      --in-place     write over the input
      --values       write the results of DRAWER as values, for who has no add-in
      --sheet NAME   with --values: that sheet alone, and what it takes from others
                     as values too
  -q, --quiet        print only what kept its value
  -h, --help         print this

Formulas of DRAWER and the spreadsheet program's own are worked out, dynamic arrays
spill, and only cells whose value changes are written: every other part of the file
stays byte for byte. The new file takes its place in one step, or not at all.

Calls of DRAWER that the spreadsheet program left as #NAME?, as it does where they were
typed while the add-in was not loaded, are written anew in the form that it resolves,
and counted as names mended.

Only regular files are read and written. A symbolic link to one stays, and the file that
it leads to is written; other hard links to it keep the old file. Mode and owner stay.
Write ./-name for a file whose name begins with a dash.

Cells of DRAWER that give an error are listed with what it says. A formula that cannot
be worked out here (a function that is missing, another workbook, a data table, a
circle) keeps its stored value and is listed.

A copy of --values calls no DRAWER function: their results are plain values in their
formats, A5# is the range that it spilled over, and native formulas stay. An error stays
that error. The date and the version stand in the file's properties, and at the left of
the printed foot of sheets that have nothing there.

Exit code
  0  every formula was recalculated
  1  the workbook was written, but some formulas kept their stored values
  2  the command or the file cannot be used; nothing was written
`;
