import { describe, expect, test } from "vitest";
import { remembering } from "../../../src/workbook/edit/memory";

/** A function that counts how often it is really called. */
function counted(answer: (...args: unknown[]) => unknown) {
  const calls: unknown[][] = [];
  const called = (...args: unknown[]) => {
    calls.push(args);
    return answer(...args);
  };
  const { F } = remembering({ F: called }) as unknown as { F: (...args: unknown[]) => unknown };
  return { F, calls };
}

describe("a function that remembers", () => {
  test("is called once for the same tables, and anew for others", () => {
    const { F, calls } = counted((table) => (table as number[][])[0]![0]! * 2);
    expect([F([[1]], null), F([[1]], null), F([[2]], null), F([[1]], "mm")]).toEqual([2, 2, 4, 2]);
    expect(calls).toHaveLength(3);
  });

  test("tells the text 1, the number 1, TRUE and a blank apart", () => {
    const { F, calls } = counted((table) => typeof (table as unknown[][])[0]![0]);
    expect([F([["1"]]), F([[1]]), F([[true]]), F([[null]])]).toEqual(["string", "number", "boolean", "object"]);
    expect(calls).toHaveLength(4);
  });

  test("throws again what it threw", () => {
    const fault = new Error("rates lacks a price");
    const { F, calls } = counted(() => {
      throw fault;
    });
    expect(() => F([[1]])).toThrow(fault);
    expect(() => F([[1]])).toThrow(fault);
    expect(calls).toHaveLength(1);
  });

  test("of single cells is called each time", () => {
    const { F, calls } = counted(() => 1);
    F(24, "1/2");
    F(24, "1/2");
    expect(calls).toHaveLength(2);
  });

  test("forgets what was asked longest ago, once it is much", () => {
    const { F, calls } = counted(() => 1);
    const large = (i: number) => [[`${i}${"x".repeat(900_000)}`]];
    for (const i of [1, 2, 3, 1, 4, 5]) F(large(i));
    expect(calls).toHaveLength(5);
    F(large(1));
    expect(calls).toHaveLength(5);
    F(large(2));
    expect(calls).toHaveLength(6);
  });
});
