import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { functionFiles, functionReference } from "../../src/build";
import { callOf, literal, matches } from "../functions/literals";
import { Office, PROTOCOLS, type Call, type Session } from "./office";

const examples = functionReference(functionFiles("src/functions"))
  .flatMap((group) => group.functions)
  .flatMap(({ name, examples: given }) => given.map((example) => ({ name, ...example })));

let office: Office;
beforeAll(async () => {
  office = await Office.start();
});
afterAll(() => office.close());

describe.each(PROTOCOLS)("the built add-in under the platform's runtime, protocol of the %s", (protocol) => {
  let session: Session;
  let answers: Awaited<ReturnType<Session["call"]>>;
  beforeAll(async () => {
    session = await office.open({ protocol });
    await session.ready();
    answers = await session.call(examples.map(({ formula, name }): Call => [name, callOf(formula).args]));
  });
  afterAll(() => session.close());

  test.each(examples.map((example, i) => ({ ...example, i })))("$formula gives $result", ({ i, result }) => {
    const { ok, value } = answers[i]!;
    expect(ok, JSON.stringify(value)).toBe(true);
    expect(matches(plain(value), literal(result)), JSON.stringify(value)).toBe(true);
  });

  test("asks nothing of any address but its own and the library's, and throws nothing", () => {
    expect(session.elsewhere.filter((address) => !/\.(microsoft|office)\.(com|net)\//.test(address))).toEqual([]);
    expect(session.faults).toEqual([]);
  });
});

/** Takes the number format off. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(plain);
  return typeof value === "object" && value !== null ? (value as { basicValue: unknown }).basicValue : value;
}
