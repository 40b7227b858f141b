import { svgOf, type Drawing } from "../../drawing/index";
import { element } from "../element";
import { HostFault, type Host } from "../host/host";
import { saveFile } from "../host/save-file";
import { faultMessage, MESSAGES } from "../messages";
import { patiently } from "../patiently";
import { PictureFollower } from "./follower";
import type { Picture } from "./picture-of";
import { base64Of, fileName, pngOf } from "./save-picture";
import { shown } from "./shown";

/** The drawings on the page. */
export interface DrawingSection {
  /** Draws what the selected cell tells, and goes on with it as another is selected. */
  follow(host: Host | undefined): Promise<void>;
}

/** Fills `place` with its title, and with drawings once there is something to draw. */
export function drawingSection(place: HTMLElement): DrawingSection {
  const title = element("h2", { id: "drawing-title" }, "Drawing");
  const drawn = element("div", { class: "drawings" });
  const told = element("p", { class: "told" }, MESSAGES.drawingHint);
  place.replaceChildren(title, told, drawn);

  const show = (picture: Picture | undefined): void => {
    const drawings = picture && "drawings" in picture ? picture.drawings : [];
    told.textContent = drawings.length > 0 ? "" : picture && "why" in picture ? picture.why : MESSAGES.drawingHint;
    drawn.replaceChildren(...drawings.map((drawing) => figure(drawing, host)));
  };
  let host: Host | undefined;

  return {
    async follow(found) {
      host = found;
      if (!host) return;
      if (!host.ranges || !host.can.tellSelection) return void (told.textContent = MESSAGES.noRanges);
      const follower = new PictureFollower(host.ranges);
      let asked = 0;
      const draw = async (address: string): Promise<void> => {
        const turn = ++asked;
        const picture = await follower.at(address).catch((thrown: unknown) => ({ why: faultMessage(thrown) }));
        // Another cell may have been selected meanwhile.
        if (turn === asked) show(picture);
      };
      await patiently(
        async () => {
          await draw((await found!.selection()).address);
          await found!.onSelectionChanged(({ address }) => void draw(address));
        },
        () => show(undefined),
      );
    },
  };
}

/**
 * A drawing with its title, and ways to keep it.
 * @param host whose workbook may take it as a picture
 */
export function figure(drawing: Drawing, host: Host | undefined): HTMLElement {
  const told = element("p", { role: "status" });
  const button = (label: string, onClick: () => Promise<string>): HTMLElement => {
    const made = element("button", { type: "button", "aria-label": `${label}: ${drawing.title}` }, label);
    made.addEventListener("click", () => {
      told.textContent = "";
      onClick().then(
        (text) => (told.textContent = text),
        (thrown: unknown) =>
          (told.textContent = thrown instanceof HostFault ? faultMessage(thrown) : MESSAGES.notSaved),
      );
    });
    return made;
  };
  const save = (label: string, make: () => Promise<Blob>, kind: string): HTMLElement =>
    button(label, async () => {
      saveFile(await make(), fileName(drawing.title, kind));
      return "";
    });
  const kept = svgOf(drawing, { onPaper: true });
  const put = (to: NonNullable<Host["addPicture"]>): HTMLElement =>
    button(MESSAGES.putPicture, async () =>
      MESSAGES.pictureStands(
        await to({
          png: await base64Of(await pngOf(kept, drawing)),
          name: drawing.title.slice(0, LONGEST_NAME),
          description: drawing.title,
          width: ((drawing.box.right - drawing.box.left) * 72) / 25.4,
        }),
      ),
    );
  return element(
    "figure",
    {},
    element("div", { class: "picture", tabindex: "0", role: "group", "aria-label": drawing.title }, shown(drawing)),
    element(
      "figcaption",
      {},
      element("span", {}, drawing.title),
      save(MESSAGES.saveSvg, async () => new Blob([kept], { type: "image/svg+xml" }), "svg"),
      save(MESSAGES.savePng, () => pngOf(kept, drawing), "png"),
      ...(host?.addPicture ? [put((picture) => host.addPicture!(picture))] : []),
    ),
    told,
  );
}

const LONGEST_NAME = 120;
