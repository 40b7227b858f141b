import * as functions from "../../functions/index";
import type { CustomFunction } from "../engine/index";
import { remembering } from "./memory";
import { NAMESPACE } from "./namespace";
import { namingSheetRows } from "./sheet-rows";

/** The cell functions, as the engine takes them. Their results bring a number format where they are lengths. */
export const OWN_FUNCTIONS: Record<string, CustomFunction> = namingSheetRows(
  remembering(withFormats({ ...functions })),
);

export function isOwnFunction(name: string): boolean {
  const [namespace, own, ...rest] = name.toUpperCase().split(".");
  return namespace === NAMESPACE && rest.length === 0 && own !== undefined && Object.hasOwn(OWN_FUNCTIONS, own);
}

function withFormats(functions: Record<string, CustomFunction>): Record<string, CustomFunction> {
  return Object.fromEntries(
    Object.entries(functions).map(([name, call]) => [
      name,
      (...args: never[]) => {
        const before = globalThis.drawerHost;
        globalThis.drawerHost = { showsNumberFormats: true };
        try {
          return call(...args);
        } finally {
          globalThis.drawerHost = before;
        }
      },
    ]),
  );
}
