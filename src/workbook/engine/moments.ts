/** A date with the year first, a time of day, or both: those that mean the same everywhere. As days from 1900 on. */
export function momentOf(text: string): number | undefined {
  const match =
    /^(?:(\d{4})-(\d{1,2})-(\d{1,2}))?(?: *(?:^|T| )(\d{1,4}:\d{1,2}(?::\d{1,2}(?:\.\d{1,3})?)?(?: [ap]m?)?))?$/i.exec(
      text,
    );
  if (!match || text === "") return undefined;
  const time = match[4] === undefined ? 0 : timeOf(match[4]);
  if (match[1] === undefined || time === undefined) return time;
  const date = dateOf(Number(match[1]), Number(match[2]), Number(match[3]));
  return date === undefined ? undefined : date + time;
}

/** Days from 1900 on, where the year 1900 is wrongly held to be a leap year. */
function dateOf(year: number, month: number, day: number): number | undefined {
  if (year === 1900 && month === 2 && day === 29) return 60;
  const date = new Date(Date.UTC(year, month - 1, day));
  if (year < 1900 || date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return undefined;
  const days = date.getTime() / 86_400_000 + 25_569;
  return days <= 60 ? days - 1 : days;
}

function timeOf(text: string): number | undefined {
  const match = /^(\d+):(\d+)(?::([\d.]+))?(?: ([ap])m?)?$/i.exec(text)!;
  const [hour, minute, second] = [Number(match[1]), Number(match[2]), Number(match[3] ?? 0)];
  if (minute > 59 || second >= 60) return undefined;
  if (!match[4]) return hour > 9999 ? undefined : (hour * 3600 + minute * 60 + second) / 86_400;
  if (hour < 1 || hour > 12) return undefined;
  const afternoon = match[4].toLowerCase() === "p" ? 12 : 0;
  return (((hour % 12) + afternoon) * 3600 + minute * 60 + second) / 86_400;
}
