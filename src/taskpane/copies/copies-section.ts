import { version } from "../../../package.json";
import { whileResting } from "../busy";
import { element } from "../element";
import type { FrozenCopies, Host } from "../host/host";
import { today } from "../host/today";
import type { Outcome } from "../insert";
import { faultMessage, MESSAGES } from "../messages";

/** The way to copies with values, once the pane knows what it stands beside. */
export interface CopiesSection {
  connect(host: Host | undefined): void;
}

/** Fills `place` with a title and buttons. */
export function copiesSection(place: HTMLElement, say: (outcome: Outcome) => void): CopiesSection {
  place.hidden = true;
  return {
    connect(host) {
      place.hidden = !host?.beginCopy && !host?.copies;
      if (place.hidden) return;
      place.replaceChildren(
        element("h2", { id: "copies-title" }, "A copy with values"),
        element("p", { class: "told" }, host?.beginCopy ? IN_PAGE : BESIDE),
        element("div", { class: "buttons" }, ...(host?.beginCopy ? [begin(host, say)] : makers(host!.copies!, say))),
      );
    },
  };
}

const IN_PAGE = "For a client, a tablet, or a program without the functions.";
const BESIDE =
  "For a client, or to keep: new sheets behind yours, in which the results of the functions are plain values, dated.";

function begin(host: Host, say: (outcome: Outcome) => void): HTMLButtonElement {
  const button = element("button", { type: "button" }, "Freeze…");
  button.onclick = () => host.beginCopy!().catch((thrown) => say({ ok: false, text: faultMessage(thrown) }));
  return button;
}

/** One copy at a time. */
function makers(copies: FrozenCopies, say: (outcome: Outcome) => void): HTMLButtonElement[] {
  const make = async (which: "open" | "all"): Promise<Outcome> => {
    const names = await copies.add(which, { date: today(), version });
    return names.length > 0
      ? { ok: true, text: MESSAGES.copiesMade(names) }
      : { ok: false, text: MESSAGES.noCalls(which) };
  };
  const buttons: HTMLButtonElement[] = (["open", "all"] as const).map((which) => {
    const button = element("button", { type: "button" }, which === "open" ? "Freeze this sheet" : "Freeze all sheets");
    button.onclick = () =>
      void whileResting(buttons, async () => {
        say({ ok: true, text: MESSAGES.copying });
        say(await make(which).catch((thrown) => ({ ok: false, text: faultMessage(thrown) })));
      });
    return button;
  });
  return buttons;
}
