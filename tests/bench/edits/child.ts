import "../../host";
import { Bookkeeper } from "../../../src/workbook/browser/worker/bookkeeper";
import { editedCells, told } from "./cases";

for (const edited of editedCells()) {
  const bookkeeper = new Bookkeeper();
  const { sheets } = bookkeeper.answer("open", { bytes: edited.bytes, edits: [] });
  const place = { sheet: sheets[0]!.id, ...edited.cell };
  const times = edited.contents.map((content, i) => {
    const start = performance.now();
    const { difference } = bookkeeper.answer("put", { edits: [{ ...place, content }] });
    const time = performance.now() - start;
    if (i > 0 && difference.values.set.size === 0) throw new Error(`Nothing follows from ${edited.what}.`);
    return time;
  });
  console.log(told(edited, times));
}
