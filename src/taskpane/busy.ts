/** One thing at a time: the buttons rest while it is done, and the keys then are where they were. */
export async function whileResting(buttons: readonly HTMLButtonElement[], work: () => Promise<void>): Promise<void> {
  const hadKeys = document.activeElement;
  buttons.forEach((button) => (button.disabled = true));
  await work();
  buttons.forEach((button) => (button.disabled = false));
  // A button that is disabled loses the keys.
  if (hadKeys instanceof HTMLElement && document.activeElement === document.body && hasKeys()) hadKeys.focus();
}

/** Whether keys come here. Beside a grid of ours, the page around tells; a document in the frame may take itself to have them. */
export const hasKeys = (): boolean => {
  const frame = window.frameElement;
  return !frame || frame.ownerDocument.activeElement === frame;
};
