/** Such as 2026-05-04, by the clock of whoever looks at it. */
export const dateOf = (moment: Date): string =>
  [moment.getFullYear(), moment.getMonth() + 1, moment.getDate()]
    .map((part) => String(part).padStart(2, "0"))
    .join("-");
