import type { Host } from "./host/host";
import { MESSAGES } from "./messages";

/** Keeps showing which cell an example would go into, or why there is none. */
export async function showPlace(place: HTMLElement, host: Host | undefined): Promise<void> {
  if (!host) return void (place.textContent = MESSAGES.noHost);
  if (!host.can.insert) return void (place.textContent = MESSAGES.tooOld);
  const show = ({ address }: { address: string }): void => {
    place.textContent = MESSAGES.selected(address);
  };
  try {
    show(await host.selection());
    await host.onSelectionChanged(show);
  } catch {
    // Inserting asks for the selection again, and will say what is in the way.
    place.textContent = MESSAGES.unknownCell;
  }
}
