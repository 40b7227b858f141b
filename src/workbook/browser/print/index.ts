import type { OpenInGrid } from "../session";
import { part } from "../part";
import { layOut } from "./pages";
import { askForPages } from "./print-dialog";

/** Asks what to print, lays it out as pages, and has the browser print those; where it can, as a PDF too. */
export function printSheets(opened: OpenInGrid, name: string, open: string, fault: (error: unknown) => void): void {
  const { book, calculation } = opened;
  const sheets = book.sheets
    .filter(({ hasCells, isHidden }) => hasCells && !isHidden)
    .map(({ id, name }) => ({ id, name, isOpen: id === open }));
  askForPages(part("print-pages"), sheets, ({ sheets: chosen, paper }) => {
    const lay = async (): Promise<void> => {
      await calculation.settled();
      const printed = await book.printed(chosen);
      const room = part("pages");
      layOut(room, printed, { paper, file: name, now: new Date(), date1904: book.date1904 });
      addEventListener("afterprint", () => room.replaceChildren(), { once: true });
      print();
    };
    lay().catch(fault);
  });
}
