import { beside, newJob, type Choices } from "../../workbook/new-job/index";
import { hasKeys, whileResting } from "../busy";
import { element } from "../element";
import type { Host, NewSheets } from "../host/host";
import { faultMessage, MESSAGES } from "../messages";
import { jobForm } from "./job-form";
import { shopColumns, type ShopColumns } from "./shop-columns";

/** The way to a job of one's own, once the pane knows what it stands beside. */
export interface NewJobSection {
  connect(host: Host | undefined): void;
}

/** Fills `place` with a title and a button; the choices come as it is clicked. */
export function newJobSection(place: HTMLElement): NewJobSection {
  place.hidden = true;
  const told = element("p", { role: "status" });
  const fill = (...content: HTMLElement[]): void =>
    place.replaceChildren(element("h2", { id: "new-job-title" }, "A job of your own"), ...content, told);
  return {
    connect(host) {
      place.hidden = !host?.beginJob && !host?.sheets;
      if (place.hidden) return;
      const ways: HTMLElement[] = [];
      if (host?.beginJob) {
        const begin = button("New job…");
        begin.onclick = () => host.beginJob!().catch((thrown) => (told.textContent = faultMessage(thrown)));
        ways.push(element("p", {}, IN_PAGE), begin);
      }
      if (host?.sheets) {
        const { sheets } = host;
        const begin = button(host.beginJob ? "Beside this workbook…" : "New job…");
        begin.onclick = () => {
          told.textContent = "";
          const form = chooser(sheets, told, () => {
            fill(...ways);
            // Where the keys went to what was laid out, they stay there.
            if (hasKeys()) begin.focus();
          });
          fill(form);
          form.querySelector("select")!.focus();
        };
        ways.push(element("p", {}, host.beginJob ? OR_BESIDE : BESIDE), begin);
      }
      fill(...ways);
    },
  };
}

const IN_PAGE = "A few choices lay out a workbook: type openings or cabinets, and every result follows.";
const OR_BESIDE = "Or sheets beside what is open, which may follow a table that stands there already.";
const BESIDE = "A few choices lay out sheets beside yours: type openings or cabinets, and every result follows.";

const button = (text: string, type = "button"): HTMLButtonElement => element("button", { type }, text);

/** The choices, and what comes of them. */
function chooser(sheets: NewSheets, told: HTMLElement, close: () => void): HTMLFormElement {
  const form = jobForm();
  const begin = button("Begin", "submit");
  const cancel = button("Cancel");
  const read = button("Use the selected table");
  const place = element("div", {});
  let shop: ShopColumns | undefined;

  /** One thing at a time, and what went wrong is said. */
  const busy = (work: () => Promise<string>): Promise<void> =>
    whileResting([begin, cancel, read], async () => {
      told.textContent = await work().catch(faultMessage);
    });
  const readSelected = async (): Promise<string> => {
    const found = await sheets.selected();
    if (!found) return MESSAGES.noTable;
    if (found.values.length < 2 || found.values[0]!.length < 2) return MESSAGES.oneCell;
    shop = shopColumns(found, form.choices().from);
    place.replaceChildren(shop.fields);
    return "";
  };

  cancel.addEventListener("click", close);
  read.addEventListener("click", () => void busy(readSelected));
  const made = element(
    "form",
    {},
    ...form.fields,
    element("p", {}, "Your sizes stand in a table already? Select it, headings and all."),
    read,
    place,
    element("div", { class: "buttons" }, begin, cancel),
  );
  // Cabinets have other columns than openings.
  form.fields[0]!.addEventListener("change", () => shop && void busy(readSelected));
  made.addEventListener("submit", (event) => {
    event.preventDefault();
    const fault = form.fault();
    if (fault !== undefined) return void (told.textContent = fault);
    told.textContent = MESSAGES.layingOut;
    void busy(async () => {
      const said = await laidOut(sheets, { ...form.choices(), ...(shop ? { shop: shop.table() } : {}) });
      close();
      return said;
    });
  });
  return made;
}

async function laidOut(sheets: NewSheets, choices: Choices): Promise<string> {
  const workbook = beside(newJob(choices), await sheets.taken());
  await sheets.add(workbook);
  return MESSAGES.laidOut(workbook.sheets.map(({ name }) => name));
}
