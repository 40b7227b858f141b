import { shopPages } from "../../shop-pages/index";
import { whileResting } from "../busy";
import { element } from "../element";
import type { Host, Ranges } from "../host/host";
import { saveFile } from "../host/save-file";
import type { Outcome } from "../insert";
import { faultMessage, MESSAGES } from "../messages";
import { readBook } from "./read-book";

/** The shop pages on the page. */
export interface ShopPagesSection {
  connect(host: Host | undefined): void;
}

/**
 * Fills `place`, which is hidden where the host cannot tell the workbook's formulas.
 * @param say told what came of it
 */
export function shopPagesSection(place: HTMLElement, say: (outcome: Outcome) => void): ShopPagesSection {
  const button = element("button", { type: "button" }, MESSAGES.makeShopPages);
  let host: Host | undefined;
  button.addEventListener("click", () => {
    const { ranges, opensPages = false } = host ?? {};
    if (!ranges) return;
    void whileResting([button], async () => {
      say({ ok: true, text: MESSAGES.makingPages });
      say(await made(ranges, opensPages).catch((thrown) => ({ ok: false, text: faultMessage(thrown) })));
    });
  });
  place.hidden = true;
  return {
    connect(found) {
      host = found;
      place.hidden = !found?.ranges?.book;
      if (!place.hidden && !place.hasChildNodes())
        place.append(
          element("h2", { id: "shop-pages-title" }, MESSAGES.shopPages),
          element("p", { class: "told" }, MESSAGES.whatShopPagesAre),
          element("div", { class: "buttons" }, button),
        );
    },
  };
}

async function made(ranges: Ranges, opensPages: boolean): Promise<Outcome> {
  const { name, formulas } = await ranges.book!();
  const job = await readBook(formulas, (range) => ranges.values(range));
  if ("why" in job) return { ok: false, text: job.why };
  const pages = shopPages(job, name.replace(/\.xls[xmb]$/i, ""));
  const file = new Blob([pages], { type: "text/html" });
  if (opensPages && open(URL.createObjectURL(file))) return { ok: true, text: MESSAGES.pagesOpened };
  saveFile(file, "shop pages.html");
  return { ok: true, text: MESSAGES.pagesSaved };
}
