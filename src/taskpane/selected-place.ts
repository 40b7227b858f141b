import { element } from "./element";
import type { Host, Selection } from "./host/host";
import { MESSAGES } from "./messages";
import { patiently } from "./patiently";

/** Keeps showing which cell an example would go into and what is wrong in it, or why there is none. */
export async function showPlace(place: HTMLElement, host: Host | undefined): Promise<void> {
  if (!host) return void (place.textContent = MESSAGES.noHost);
  if (!host.can.insert) return void (place.textContent = MESSAGES.tooOld);
  const show = ({ address, value, message }: Selection): void => {
    place.textContent = MESSAGES.selected(address);
    if (message !== undefined) place.append(element("strong", { class: "reason" }, `${String(value)} ${message}`));
  };
  await patiently(
    async () => {
      show(await host.selection());
      await host.onSelectionChanged(show);
    },
    // Inserting asks for the selection again, and will say what is in the way.
    () => (place.textContent = MESSAGES.unknownCell),
  );
}
