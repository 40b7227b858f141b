import type { CustomFunction } from "../engine/index";

/** Characters of arguments that are remembered, in all. */
const MOST = 4_000_000;

/**
 * The same functions, which answer at once where they have lately been asked the same about a table: several
 * formulas ask the same, and a workbook that is worked out anew asks it again. They are pure, so that the answer is the same;
 * sums over single cells are quicker made than looked up.
 */
export function remembering(functions: Record<string, CustomFunction>): Record<string, CustomFunction> {
  const answers = new Map<string, Answer>();
  let size = 0;
  const forget = (key: string): void => {
    answers.delete(key);
    size -= key.length;
  };
  const ask = (key: string, call: () => unknown): Answer => {
    const answer = answers.get(key) ?? given(call);
    if (answers.has(key)) forget(key);
    answers.set(key, answer);
    size += key.length;
    // The one that was asked for longest ago comes first.
    while (size > MOST) forget(answers.keys().next().value!);
    return answer;
  };
  const remembered =
    (name: string, call: CustomFunction) =>
    (...args: unknown[]): unknown => {
      const asked = () => (call as (...args: unknown[]) => unknown)(...args);
      if (!args.some(Array.isArray)) return asked();
      const answer = ask(`${name}(${args.map(keyOf).join()})`, asked);
      if ("fault" in answer) throw answer.fault;
      return answer.value;
    };
  return Object.fromEntries(Object.entries(functions).map(([name, call]) => [name, remembered(name, call)]));
}

/** Tables are long, and one that many formulas read comes as the same object. */
function keyOf(arg: unknown): string {
  if (!Array.isArray(arg)) return JSON.stringify(arg) ?? "";
  let key = keys.get(arg);
  if (key === undefined) keys.set(arg, (key = JSON.stringify(arg)));
  return key;
}

const keys = new WeakMap<unknown[], string>();

/** What a function gave, or threw. */
type Answer = { value: unknown } | { fault: unknown };

function given(call: () => unknown): Answer {
  try {
    return { value: call() };
  } catch (fault) {
    return { fault };
  }
}
