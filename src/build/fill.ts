/**
 * Fills the `{{name}}` places of a template, every one of them.
 * @param values what stands for each name; each must be used
 * @throws Error for a place without a value and a value without a place: both are slips of the pen
 */
export function fill(template: string, values: Readonly<Record<string, string>>): string {
  const used = new Set<string>();
  const filled = template.replaceAll(/\{\{(.*?)\}\}/g, (place, name: string) => {
    const value = values[name];
    if (value === undefined) throw new Error(`The template asks for ${place}, which has no value.`);
    used.add(name);
    return escapeMarkup(value);
  });
  const unused = Object.keys(values).filter((name) => !used.has(name));
  if (unused.length > 0) throw new Error(`The template has no place for ${unused.join(", ")}.`);
  return filled;
}

const escapeMarkup = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
