import { expect } from "vitest";

/** What the host would show: the function's value, or the error with its message. */
export function shown(call: () => unknown): unknown {
  try {
    return call();
  } catch (thrown) {
    const { code, message } = thrown as { code?: string; message: string };
    if (typeof code !== "string") throw thrown;
    return message ? `${code} ${message}` : code;
  }
}

/** Asserts a call's #VALUE! with its whole message. */
export const expectValueError = (call: () => unknown, message: string): void =>
  expect(shown(call)).toBe(`#VALUE! ${message}`);
