/**
 * What a shop page does by itself: remembers ticks on the device, sets labels out on their sheets, prints what is chosen
 * and keeps itself. It is text, for it goes into the page as it stands, and pages run no other (`SCRIPT_HASH`).
 */
export const SCRIPT = `
"use strict";
const original = "<!doctype html>\\n" + document.documentElement.outerHTML;
const at = (id) => document.getElementById(id);
const told = (text) => { at("told").textContent = text; };
const place = "shop pages " + document.body.dataset.job;
let ticked = new Set();
try { ticked = new Set(JSON.parse(localStorage.getItem(place) || "[]")); } catch { told("This browser remembers no ticks."); }
const remember = () => {
  try { localStorage.setItem(place, JSON.stringify([...ticked])); } catch { told("This browser remembers no ticks."); }
};
const boxes = [...document.querySelectorAll("input[data-tick]")];
for (const box of boxes) box.checked = ticked.has(box.dataset.tick);
addEventListener("change", ({ target }) => {
  if (!target.dataset.tick) return;
  if (target.checked) ticked.add(target.dataset.tick); else ticked.delete(target.dataset.tick);
  remember();
});
at("untick").addEventListener("click", () => {
  ticked.clear();
  for (const box of boxes) box.checked = false;
  remember();
  told("All ticks are cleared.");
});
at("print").addEventListener("click", () => print());
for (const box of document.querySelectorAll("input[data-print]")) {
  box.addEventListener("change", () => at(box.dataset.print).classList.toggle("unprinted", !box.checked));
}
at("keep").addEventListener("click", () => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([original], { type: "text/html" }));
  link.download = "shop pages.html";
  link.click();
});
const form = at("label-sheet"), pages = at("label-pages");
const labels = [...pages.children];
const number = (text) => {
  const found = /^(?:(\\d+(?:\\.\\d+)?)(?:\\s+(\\d+)\\/(\\d+))?|(\\d+)\\/(\\d+))$/.exec(text);
  if (!found) return NaN;
  const [, whole, up, down, above, below] = found;
  return whole === undefined ? above / below : Number(whole) + (up ? up / down : 0);
};
const millimeters = (text) => {
  const [, size, unit] = /^\\s*([\\d.\\s\\/]*[\\d])\\s*(mm|cm|in|")?\\s*$/.exec(text) || [];
  const factor = { mm: 1, cm: 10, in: 25.4, '"': 25.4 }[unit || pages.dataset.unit];
  return size === undefined ? NaN : number(size.trim()) * factor;
};
const LEAST = { width: 15, height: 8, across: 1, down: 1 };
const setOut = () => {
  const sizes = {};
  for (const field of form.elements) {
    const isCount = field.name === "across" || field.name === "down";
    const size = isCount ? (/^\\s*[1-9]\\d?\\s*$/.test(field.value) ? Number(field.value) : NaN) : millimeters(field.value);
    const isRight = size >= (LEAST[field.name] || 0) && size <= 400;
    field.setAttribute("aria-invalid", String(!isRight));
    sizes[field.name] = isRight ? size : undefined;
  }
  if (Object.values(sizes).includes(undefined)) { told("A measure of the label sheet cannot be read: labels stay as they were."); return false; }
  told("");
  const style = pages.style;
  for (const [name, size] of Object.entries(sizes)) style.setProperty("--" + name, name === "across" || name === "down" ? size : size + "mm");
  const each = sizes.across * sizes.down;
  const sheets = [];
  for (let i = 0; i < labels.length; i += each) {
    const sheet = document.createElement("div");
    sheet.className = "label-sheet";
    sheet.append(...labels.slice(i, i + each));
    sheets.push(sheet);
  }
  pages.replaceChildren(...sheets);
  return true;
};
const measures = "shop pages' label sheet";
try { for (const [name, value] of Object.entries(JSON.parse(localStorage.getItem(measures) || "{}"))) if (form.elements[name]) form.elements[name].value = value; } catch {}
setOut();
form.addEventListener("input", () => {
  if (setOut()) try { localStorage.setItem(measures, JSON.stringify(Object.fromEntries(new FormData(form)))); } catch {}
});
form.addEventListener("submit", (event) => event.preventDefault());
`;

/** The script's hash, by which policies allow it and nothing else; a test holds it against the script. */
export const SCRIPT_HASH = "sha256-eneaSjuZEz8URzeOHUkby23uaNf6BQBPVawPmYUdaR4=";
