import { formulaCall, type CallArgument } from "../../shop-pages/index";
import { figure } from "../drawing/drawing-section";
import { pictureOf } from "../drawing/picture-of";
import { readArguments } from "../drawing/read-arguments";
import { element } from "../element";
import type { Host } from "../host/host";
import type { Outcome } from "../insert";
import { faultMessage, MESSAGES } from "../messages";
import { patiently } from "../patiently";
import type { Progress } from "./progress";
import { written } from "./written";

/** The search for better sheets on the page. */
export interface BetterSheets {
  follow(host: Host | undefined): Promise<void>;
}

/** A call of SHEETS, LAYOUT or CUTS, ready to be searched for. */
interface Searched {
  raw: unknown[];
  args: readonly CallArgument[];
  sheet: string;
}

type Found = Extract<Progress, { sheets: number }>;

/**
 * Fills `place`, which is hidden unless a cell of SHEETS, LAYOUT or CUTS is selected, or a search goes on.
 * @param say told what came of writing a layout
 */
export function betterSheets(place: HTMLElement, say: (outcome: Outcome) => void): BetterSheets {
  const told = element("p", { class: "told" });
  const time = element("p", { class: "told" });
  const shown = element("div", { class: "drawings" });
  const button = (label: string): HTMLButtonElement => element("button", { type: "button" }, label);
  const [begin, stop, write] = [button(MESSAGES.searchOn), button(MESSAGES.stop), button(MESSAGES.writeLayout)];
  const buttons = element("div", { class: "buttons" }, begin, stop, write);
  const title = element("h2", { id: "better-title" }, MESSAGES.betterSheets);
  // What improves is read out, what only goes on is not.
  told.setAttribute("role", "status");

  let host: Host | undefined;
  let selected: Searched | undefined;
  let going: { worker: Worker; ticking: number } | undefined;
  let found: { progress: Found; layout: NonNullable<Found["layout"]>; of: Searched } | undefined;

  const show = (): void => {
    const isUsed = selected !== undefined || going !== undefined || found !== undefined;
    if (isUsed && place.hidden) place.replaceChildren(title, told, time, buttons, shown);
    place.hidden = !isUsed;
    begin.hidden = going !== undefined || !selected;
    stop.hidden = going === undefined;
    write.hidden = !found || !host?.addSheet;
  };
  /** What is the same is not read out again. */
  const tell = (text: string): void => {
    if (told.textContent !== text) told.textContent = text;
  };
  const end = (): void => {
    going?.worker.terminate();
    clearInterval(going?.ticking);
    going = undefined;
    show();
  };
  const take = (progress: Progress, of: Searched): void => {
    if ("why" in progress) {
      told.textContent = progress.why;
      return end();
    }
    const layout = progress.layout ?? found!.layout;
    found = { progress, layout, of };
    tell(MESSAGES.soFar(progress, !progress.proven));
    if (progress.layout) draw(layout, of);
    if (progress.proven) end();
    else show();
  };
  /** Every sheet, or the first few of many. */
  const draw = (layout: readonly unknown[][], { raw }: Searched): void => {
    const last = Number(layout[layout.length - 1]?.[0] ?? 0);
    const drawings = Array.from({ length: Math.min(last, MOST_DRAWN) }, (_, i) => {
      const row = layout.findIndex(([sheet]) => sheet === i + 1);
      const picture = pictureOf("LAYOUT", [layout, ...raw.slice(1)], row);
      return "drawings" in picture ? picture.drawings : [];
    });
    shown.replaceChildren(...drawings.flat().map((drawing) => figure(drawing, host)));
  };

  begin.addEventListener("click", () => {
    if (!selected) return;
    const of = selected;
    found = undefined;
    shown.replaceChildren();
    told.textContent = MESSAGES.searching;
    const worker = new Worker("better-sheets.js", { type: "module" });
    const start = Date.now();
    const tick = (): void => void (time.textContent = MESSAGES.elapsed(Math.round((Date.now() - start) / 1000)));
    tick();
    going = { worker, ticking: window.setInterval(tick, 1000) };
    worker.addEventListener(
      "message",
      ({ data }: MessageEvent<Progress>) => going?.worker === worker && take(data, of),
    );
    worker.addEventListener("error", () => take({ why: MESSAGES.searchFailed }, of));
    worker.postMessage(of.raw);
    show();
    stop.focus();
  });
  stop.addEventListener("click", () => {
    end();
    if (found) tell(MESSAGES.soFar(found.progress, false));
    (write.hidden ? begin : write).focus();
  });
  write.addEventListener("click", () => {
    if (!found || !host?.addSheet) return;
    end();
    const { progress, layout, of } = found;
    tell(MESSAGES.soFar(progress, false));
    host
      .addSheet(MESSAGES.betterSheets, written(progress, layout, of.args, of.sheet))
      .then((name) => say({ ok: true, text: MESSAGES.layoutWritten(name) }))
      .catch((thrown: unknown) => say({ ok: false, text: faultMessage(thrown) }));
  });
  place.hidden = true;

  return {
    async follow(given) {
      host = given;
      const ranges = given?.can.tellSelection ? given.ranges : undefined;
      if (!given || !ranges) return;
      let asked = 0;
      const look = async (): Promise<void> => {
        const turn = ++asked;
        const searched = await selectedCall(ranges);
        if (turn !== asked) return;
        selected = searched;
        show();
      };
      await patiently(
        async () => {
          await look();
          await given.onSelectionChanged(() => void look().catch(() => undefined));
        },
        () => undefined,
      );
    },
  };
}

/** More sheets are not drawn at once. */
const MOST_DRAWN = 12;

async function selectedCall(ranges: NonNullable<Host["ranges"]>): Promise<Searched | undefined> {
  const shown = await ranges.shownBy();
  const call = shown && formulaCall(shown.formula);
  if (!shown || !call || !["SHEETS", "LAYOUT", "CUTS"].includes(call.name)) return undefined;
  const read = await readArguments(ranges, call.args, shown.sheet);
  return "why" in read ? undefined : { raw: read.raw, args: call.args, sheet: shown.sheet };
}
