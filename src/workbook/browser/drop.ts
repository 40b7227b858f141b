/** What becomes of files that are dropped onto the page. */
export interface Drops {
  open(file: File): void;
  refuse(words: string): void;
}

/**
 * Opens a file that is dropped anywhere, as the Open button does. Left to itself, a browser would go to the file and
 * leave the page, so that is kept from happening in the pane's frame too.
 * @param hint shown while a file is held over the page
 */
export function takeDrops(frame: HTMLIFrameElement, hint: HTMLElement, drops: Drops): void {
  let last = 0;
  const over = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    event.stopPropagation();
    event.dataTransfer.dropEffect = "copy";
    hint.hidden = false;
    // A drag that goes elsewhere says so to some element, or to none; one that is here says so again and again.
    clearTimeout(last);
    last = setTimeout(() => (hint.hidden = true), 500) as unknown as number;
  };
  const drop = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    event.stopPropagation();
    hint.hidden = true;
    const [file, ...more] = event.dataTransfer.files;
    if (file && more.length === 0) drops.open(file);
    else drops.refuse(file ? SEVERAL : NO_FILE);
  };
  const listen = (target: Window | null): void => {
    target?.addEventListener("dragenter", over, true);
    target?.addEventListener("dragover", over, true);
    target?.addEventListener("drop", drop, true);
  };
  listen(window);
  frame.addEventListener("load", () => listen(frame.contentWindow));
  listen(frame.contentWindow);
}

const SEVERAL = "Several files were dropped. One workbook is open at a time: drop one.";
const NO_FILE = "What was dropped is no file.";
