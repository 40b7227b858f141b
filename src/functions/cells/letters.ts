/**
 * What comes first, second … by letters: A, B … Z, AA, AB …
 * @param n from 1 on
 */
export const letters = (n: number): string =>
  n < 1 ? "" : letters(Math.floor((n - 1) / 26)) + String.fromCharCode(65 + ((n - 1) % 26));
