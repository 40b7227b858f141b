import { saveFile } from "../../taskpane/host/save-file";
import type { Work } from "./work";

/**
 * Opens the pages for the shop beside the workbook, as it is now; where no other page may open, they are kept as a file.
 * @returns why there are none
 */
export async function openShopPages(work: Work): Promise<string | undefined> {
  const { calculation, book } = work.opened;
  await calculation.settled();
  const made = await book.shopPages(work.name.replace(/\.xlsx$/i, ""));
  if ("why" in made) return `There are no shop pages. ${made.why}`;
  const file = new Blob([made.html], { type: "text/html" });
  if (!open(URL.createObjectURL(file))) saveFile(file, "shop pages.html");
  return undefined;
}
