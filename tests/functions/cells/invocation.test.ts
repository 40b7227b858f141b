import { describe, expect, test } from "vitest";
import { functionFiles, functionReference } from "../../../src/build";
import * as functions from "../../../src/functions";
import { invocationAmong, isInvocation } from "../../../src/functions/cells/invocation";
import { shown } from "../../cell";
import { callOf } from "../literals";

/** As the web's runtime makes it: what can be read of it stands on its prototype. */
class InvocationContext {
  constructor(private readonly _functionName: string) {}
  get functionName(): string {
    return this._functionName;
  }
  get parameterAddresses(): string[] {
    return ["Sheet1!A1", "Sheet1!B1:C3"];
  }
}

const plain = { functionName: "BOXWIDTH", address: "[Book.xlsx]Sheet1!A1", parameterAddresses: ["Sheet1!A1"] };

const described = functionReference(functionFiles("src/functions")).flatMap((group) => group.functions);

const calls = described.flatMap(({ name, parameters, examples }) => {
  const { args } = callOf(examples[0]!.formula);
  return parameters.map((_, known) => ({ name, known, args: args.slice(0, known) }));
});

describe("metadata that a host has kept from before an argument was added", () => {
  test.each(calls)("$name, of which it knows $known arguments, reads the host's object as a blank", (call) => {
    const asked = (blank: unknown) =>
      shown(() =>
        (functions[call.name as keyof typeof functions] as (...args: unknown[]) => unknown)(...call.args, blank),
      );
    const wanted = asked(null);
    expect(asked(new InvocationContext(call.name))).toEqual(wanted);
    expect(asked(plain)).toEqual(wanted);
    expect(JSON.stringify(wanted)).not.toMatch(/could not be worked out/);
  });

  test("leaves every default in its place", () => {
    expect(functions.BOXWIDTH(24, plain)).toBe(23);
    expect(functions.BOXWIDTH(24, "wood runner", plain as never)).toBe(23.875);
    expect(functions.TAPE(23.4375, plain)).toBe('23 7/16"');
  });
});

describe("isInvocation", () => {
  test("knows the host's object, plain or with what it tells on its prototype", () => {
    expect(isInvocation(plain)).toBe(true);
    expect(isInvocation(new InvocationContext("A"))).toBe(true);
  });

  test.each([
    [null],
    [undefined],
    ["functionName"],
    [[["functionName"]]],
    [{}],
    [{ functionName: 1 }],
    [{ type: "Entity", text: "Birch", functionName: "A" }],
    [{ type: "Double", basicValue: 1, functionName: "A" }],
    [new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable)],
  ])("takes no value of a cell for it: %j", (value) => expect(isInvocation(value)).toBe(false));

  test("a data card that bears such a property is refused as a data card", () => {
    expect(shown(() => functions.BOXWIDTH({ type: "Entity", text: "Birch", functionName: "A" }))).toBe(
      "#VALUE! opening_width holds no plain value (Entity). It takes a number or a text.",
    );
  });
});

test("invocationAmong finds the host's object wherever it stands, with the addresses of the arguments", () => {
  expect(invocationAmong([24, null, new InvocationContext("A")])?.parameterAddresses).toEqual([
    "Sheet1!A1",
    "Sheet1!B1:C3",
  ]);
  expect(invocationAmong([plain, undefined])).toBe(plain);
  expect(invocationAmong([[["functionName"]], { type: "Double", basicValue: 1 }])).toBeUndefined();
});
