import { Office, PROTOCOLS, type Call, type Session } from "../office/office";

const SCALARS = 5_000;
const PLANS = 200;
const LOADS = 7;
/** The script comes when all else has been loaded and stands waiting for it. */
const LATE = 2_000;

/** The built add-in under the platform's own runtime: calls through its dispatcher, and how soon the script is ready. */
export async function benchOffice(): Promise<void> {
  const office = await Office.start();
  try {
    for (const protocol of PROTOCOLS) {
      const session = await office.open({ protocol });
      await session.ready();
      await session.call(scalars(500, 1));
      const cells = await seconds(session, scalars(SCALARS, 2));
      const plans = await seconds(
        session,
        Array.from({ length: PLANS }, (_, i) => ["PLAN", [openings(i)]]),
      );
      console.log(
        `protocol of the ${protocol}: ${SCALARS.toLocaleString("en")} scalar calls ${cells} s, ${PLANS} PLANs ${plans} s`,
      );
      await session.close();
    }
    console.log(`functions.js, from its arrival until it has run: ${await loads(office)} (limit 50 ms)`);
  } finally {
    await office.close();
  }
}

/** Each with lengths of its own. */
const scalars = (count: number, round: number): Call[] =>
  Array.from({ length: count }, (_, i) => ["BOXWIDTH", [10 + (round * count + i) / 64]]);

/** One opening of four drawers. */
const openings = (i: number): unknown[][] => [
  ["Width", "Height", "Depth", "Drawers"],
  [18 + i / 64, 26.25, 23.25, 4],
];

async function seconds(session: Session, calls: Call[]): Promise<string> {
  const start = performance.now();
  const answers = await session.call(calls);
  const time = performance.now() - start;
  if (!answers.every(({ ok }) => ok)) throw new Error("A call of the bench was refused.");
  return (time / 1000).toFixed(2);
}

/** On the protocol on which the played program and the add-in share a page, and so a clock. */
async function loads(office: Office): Promise<string> {
  const times: number[] = [];
  for (let i = 0; i < LOADS; i++) {
    const session = await office.open({ protocol: "windows", late: { "functions.js": LATE } });
    const time = untilRun(session);
    await session.ready();
    times.push(await time);
    await session.close();
  }
  const sorted = times.sort((a, b) => a - b).map((time) => time.toFixed(0));
  return `${sorted[Math.floor(LOADS / 2)]} ms (${sorted[0]} to ${sorted.at(-1)})`;
}

/** From the last byte of the script, which is still to come, until it has been compiled and has run. */
const untilRun = ({ page }: Session): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((done, fail) => {
        const script = document.querySelector<HTMLScriptElement>('script[src*="functions.js"]')!;
        if (performance.getEntriesByName(script.src).length > 0) fail(new Error("The script was there too soon."));
        script.addEventListener("load", () => {
          const [arrival] = performance.getEntriesByName(script.src) as PerformanceResourceTiming[];
          done(performance.now() - arrival!.responseEnd);
        });
      }),
  );
