import { today } from "../../taskpane/host/today";
import { download } from "./files";
import type { OpenInGrid } from "./session";

/** Asks of what a copy with values is wanted, and saves it. */
export function askToFreeze(
  { book, calculation }: OpenInGrid,
  name: string,
  open: string,
  done: (line: string) => void,
  fault: (error: unknown) => void,
): void {
  const dialog = document.querySelector<HTMLDialogElement>("#freeze-copy")!;
  const form = dialog.querySelector("form")!;
  const sheet = book.sheet(open)?.name ?? "";
  form.querySelector("[data-sheet]")!.textContent = sheet;
  form.onsubmit = (event) => {
    if ((event.submitter as HTMLButtonElement).value !== "begin") return;
    const isOne = new FormData(form).get("what") === "one";
    const save = async (): Promise<void> => {
      await calculation.settled();
      const { bytes, frozen } = await book.freeze(today(), isOne ? open : undefined);
      const copy = `${name.replace(/\.xlsx$/i, "")}${isOne ? `-${sheet}` : ""}-values.xlsx`;
      download(copy, bytes);
      done(`${copy} was saved: ${frozen === 1 ? "1 formula is a value" : `${frozen} formulas are values`} in it.`);
    };
    save().catch(fault);
  };
  dialog.showModal();
}
