import { dateOf } from "../../workbook/freeze/date";

export const today = (): string => dateOf(new Date());
