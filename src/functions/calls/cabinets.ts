import type { Argument } from "../arguments";
import { readCabinets, readCabinetTable, readStandardValues, type CabinetTable, type Divided } from "../tables";
import { tellUnit } from "./job";

/** The table of cabinets; what stands in its cells is read with the standards. */
export const cabinets: Argument<CabinetTable> = { name: "cabinets", read: (raw) => readCabinetTable(raw) };

/** The standards, which tell the unit, and divide the cabinets, the first argument. */
export const cabinetStandards: Argument<Divided> = {
  name: "standards",
  read(raw, call) {
    const values = readStandardValues(raw);
    tellUnit(call, values.get("unit"));
    return readCabinets(call.earlier[0] as CabinetTable, values);
  },
};
