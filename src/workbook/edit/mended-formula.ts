import { tokenEdits } from "../formula/token-edits";
import { CUSTOM_PREFIX } from "../formula/typed-name";
import { applyEdits } from "../text-edits";
import { ownName, toStored } from "./formula-text";

/** Writes formulas anew, and counts what was mended in them. */
export interface Mend {
  /** The formula as it has to be stored; undefined where nothing is wrong with it. */
  formula(stored: string): string | undefined;
  count: number;
}

/** Marks that programs put before names which they do not know. */
const MARKS = /^(?:_xlfn\.|_xlws\.|_xludf\.|__xludf\.)+/i;

/**
 * Only formulas that call a function of ours in another way than by its stored name are written anew; in those,
 * newer native functions get their prefixes too. Other add-ins' names, and names that are none of ours, stay.
 */
export function mender(functions: Readonly<Record<string, unknown>>, namespace: string): Mend {
  const ours = new Map(Object.keys(functions).map((name) => [ownName(`${namespace}.${name}`), `${namespace}.${name}`]));
  const likely = new RegExp(`(?<![\\w.])[\\w.]*${namespace}[._][\\w.]*`, "gi");
  const typed = (call: string): string | undefined => {
    const bare = call.replace(MARKS, "");
    if (bare.includes(".")) return ours.get(ownName(bare));
    const isStored = bare.toLowerCase().startsWith(CUSTOM_PREFIX);
    return isStored ? ours.get(CUSTOM_PREFIX + bare.slice(CUSTOM_PREFIX.length).toUpperCase()) : undefined;
  };
  return {
    count: 0,
    formula(stored) {
      // Most formulas are as they have to be, and need not be read for that.
      if (!stored.match(likely)?.some((word) => !ours.has(word))) return undefined;
      const edits = tokenEdits(stored, ({ kind, text: call }) => {
        const name = kind === "call" ? typed(call) : undefined;
        return name === undefined || call === ownName(name) ? undefined : name;
      });
      this.count += edits.length;
      return edits.length === 0
        ? undefined
        : toStored(applyEdits(stored, edits), (name) => ours.has(ownName(name)) && name.includes("."));
    },
  };
}
