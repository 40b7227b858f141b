import { ILayoutService } from "@univerjs/ui";
import type { Grid } from "./univer";

/** Keys go to the grid again, after a button that had them is gone. */
export const focusGrid = ({ univer }: Grid): void => univer.__getInjector().get(ILayoutService).focus();
