/** One of the elements of index.html. */
export const part = <T extends HTMLElement = HTMLElement>(id: string): T => document.getElementById(id) as T;
