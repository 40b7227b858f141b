/** The host's library looks here for functions before it begins; only `__delay__` is used. */
declare global {
  interface Window {
    CustomFunctionMappings?: { __delay__?: boolean };
  }
}

/**
 * Lets the host hold its calls back until the functions are there; else it would call at once, and every cell that
 * calculates as the workbook opens would stay an error. The library ends it when it gets the first function. Must run
 * before that library.
 */
export function holdCalls(): void {
  window.CustomFunctionMappings = { __delay__: true };
}

/**
 * Fetches the functions again, for as long as it takes, where they did not come with the page: the host waits for
 * them. To be called once all scripts of the page have run, or failed.
 * @param tell gets true when they are lacking, and false once they are there
 */
export function whenFunctionsLack(tell: (lacking: boolean) => void): void {
  const script = document.querySelector<HTMLScriptElement>('script[src^="functions.js"]');
  // Without the host's library there is nobody to hand them to; beside a grid of ours there is no such script.
  if (!script || typeof CustomFunctions === "undefined" || !areLacking()) return;
  tell(true);
  fetchAgain(script.src, FIRST_PAUSE, () => tell(false));
}

function fetchAgain(address: string, pause: number, done: () => void): void {
  setTimeout(() => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = script.onerror = () => {
      script.remove();
      if (areLacking()) fetchAgain(address, Math.min(2 * pause, LONGEST_PAUSE), done);
      else done();
    };
    document.head.append(script);
  }, pause);
}

const areLacking = (): boolean => window.CustomFunctionMappings?.__delay__ === true;

/** Milliseconds. */
const FIRST_PAUSE = 1_000;
const LONGEST_PAUSE = 30_000;
