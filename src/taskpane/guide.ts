import { GUIDE_PAGES, pageAddress } from "../guide/index";
import { element } from "./element";

/**
 * Fills `place` with links to the guide, and shows what they and the functions' links lead to in place of the list. It
 * stands in a frame: if this page were left for it, the functions that run here would end.
 */
export function guide(place: HTMLElement, reader: HTMLElement): void {
  place.replaceChildren(
    element("span", { class: "name" }, "Guide"),
    ...GUIDE_PAGES.map(({ name, title }) => element("a", { href: pageAddress(name), target: "_blank" }, title)),
  );
  const list = place.parentElement!;
  list.addEventListener("click", (event) => {
    const link = (event.target as Element).closest<HTMLAnchorElement>('a[href^="guide/"]');
    // With a key held, a browser opens a tab or window of its own.
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    read(reader, link.getAttribute("href")!, () => {
      list.hidden = false;
      link.focus();
    });
    list.hidden = true;
    reader.querySelector("button")!.focus();
  });
}

function read(reader: HTMLElement, address: string, onClose: () => void): void {
  const back = element("button", { type: "button" }, "‹ Functions");
  const close = (): void => {
    reader.hidden = true;
    reader.replaceChildren();
    onClose();
  };
  back.addEventListener("click", close);
  reader.onkeydown = ({ key }) => key === "Escape" && close();
  reader.replaceChildren(
    element(
      "div",
      { class: "bar" },
      back,
      element("h1", {}, "Guide"),
      element("a", { href: address, target: "_blank" }, "Open in a tab"),
    ),
    element("iframe", { src: address, title: "Guide" }),
  );
  reader.hidden = false;
}
