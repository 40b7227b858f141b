import { oneSheet, withPart } from "../support/handmade";
import { A1, MAIN, SUM, good, row } from "./file-parts";
import { book, times, type HostileCase } from "./hostile-case";

/** Files of formulas that are shared, stored in another way, or too many. */
export const SHARED_FORMULA_FILES: HostileCase[] = [
  {
    title: "10,000 sharers of one formula",
    expect: { A1: 1, A10000: 10_000 },
    make: () =>
      oneSheet(
        times(10_000, (i) =>
          row(
            `<c r="A${i + 1}">${i === 0 ? '<f t="shared" ref="A1:A10000" si="0">ROW()</f>' : '<f t="shared" si="0"/>'}<v>77</v></c>`,
            i + 1,
          ),
        ),
      ),
  },
  {
    title: "sharers of a formula that is not there",
    expect: { A1: /^kept: shares a formula/, A2: /^kept: shares a formula/ },
    make: () =>
      oneSheet(
        row('<c r="A1"><f t="shared" si="0"/><v>77</v></c>') +
          row('<c r="A2"><f t="shared" si="999999999"/><v>77</v></c>', 2),
      ),
  },
  {
    title: "10,000 shared formulas of one number",
    expect: { A1: 2 },
    make: () =>
      oneSheet(
        times(10_000, (i) => row(`<c r="A${i + 1}"><f t="shared" ref="A1:A10000" si="0">1+1</f><v>77</v></c>`, i + 1)),
      ),
  },
  {
    title: "shared formulas that lead out of the grid",
    expect: { A1: /^kept: shares a formula that the file does not hold/ },
    make: () =>
      oneSheet(
        row('<c r="A1"><f t="shared" si="0"/><v>77</v></c>') +
          row('<c r="A2"><f t="shared" ref="A1:A2" si="0">B1+1</f><v>77</v></c>', 2),
      ),
  },
  {
    title: "data tables",
    expect: { A1: "kept: is a what-if data table" },
    make: () => oneSheet(row('<c r="A1"><f t="dataTable" ref="A1:XFD1048576" dt2D="1" r1="B1" r2="C1"/><v>77</v></c>')),
  },
  {
    title: "an order of calculation of 600,000 cells",
    expect: A1,
    make: () =>
      oneSheet(row(SUM), {
        parts: { "xl/calcChain.xml": `<calcChain xmlns="${MAIN}">${'<c r="A1" i="1"/>'.repeat(600_000)}</calcChain>` },
        links: { calcChain: "calcChain.xml" },
      }),
  },
  {
    title: "100,000 records of spilling formulas",
    expect: A1,
    make: () =>
      withPart(
        good,
        "xl/metadata.xml",
        `<metadata xmlns="${MAIN}"><metadataTypes><metadataType name="XLDAPR"/></metadataTypes><cellMetadata>${'<bk><rc t="1" v="0"/></bk>'.repeat(100_000)}</cellMetadata></metadata>`,
      ),
  },
  {
    title: "3,000 hidden rows and as many subtotals of them",
    expect: { A1: /^\d+$|^kept: / },
    make: () =>
      oneSheet(
        times(
          3_000,
          (i) =>
            `<row r="${i + 1}" hidden="1"><c r="A${i + 1}"><f>SUBTOTAL(109,B1:B3000)</f><v>77</v></c><c r="B${i + 1}"><v>1</v></c></row>`,
        ),
      ),
  },
  {
    title: "15,000 formulas that nobody knows",
    expect: { A1: /^kept: calls EVIL0, which is not known/ },
    make: () => oneSheet(times(15_000, (i) => row(`<c r="A${i + 1}"><f>EVIL${i}(1)</f><v>77</v></c>`, i + 1))),
  },
  {
    title: "5,000 calls of ours as they were typed, each mended",
    expect: { A1: 23 },
    make: () =>
      oneSheet(times(5_000, (i) => row(`<c r="A${i + 1}"><f>DRAWER.BOXWIDTH(24+0*${i})</f><v>77</v></c>`, i + 1))),
  },
  {
    title: "a good file, that it may be told from the others",
    expect: { A1: 2 },
    make: () => book({ A1: "=1+1" }),
  },
];
