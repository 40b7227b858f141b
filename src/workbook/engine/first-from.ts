/** The first of so many places from which on something is so, as a search by halves finds it; the count where it never is. */
export function firstFrom(count: number, isSo: (place: number) => boolean): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isSo(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
