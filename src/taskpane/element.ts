type Attributes = Record<string, string | undefined>;

/**
 * Makes an element. Texts become text nodes, so nothing in them is ever read as markup.
 * @param attributes undefined leaves an attribute out
 */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) if (value !== undefined) made.setAttribute(name, value);
  made.append(...children);
  return made;
}
