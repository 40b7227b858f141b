import { element } from "./element";
import { HostFault, type Host, type Selection } from "./host/host";
import { MESSAGES } from "./messages";

/** Keeps showing which cell an example would go into and what is wrong in it, or why there is none. */
export async function showPlace(place: HTMLElement, host: Host | undefined): Promise<void> {
  if (!host) return void (place.textContent = MESSAGES.noHost);
  if (!host.can.insert) return void (place.textContent = MESSAGES.tooOld);
  const show = ({ address, value, message }: Selection): void => {
    place.textContent = MESSAGES.selected(address);
    if (message !== undefined) place.append(element("strong", { class: "reason" }, `${String(value)} ${message}`));
  };
  const follow = async (pause: number): Promise<void> => {
    try {
      show(await host.selection());
      await host.onSelectionChanged(show);
    } catch (thrown) {
      // Inserting asks for the selection again, and will say what is in the way.
      place.textContent = MESSAGES.unknownCell;
      const next = thrown instanceof HostFault && thrown.code === "editing" ? WHILE_EDITING : 2 * pause;
      setTimeout(() => void follow(next), Math.min(next, LONGEST));
    }
  };
  await follow(WHILE_EDITING);
}

/** Milliseconds until the host is asked again: soon where a person is typing, for that ends. */
const WHILE_EDITING = 1_000;
const LONGEST = 30_000;
