const PORT = 4680;

/**
 * The port that the environment wishes for.
 * @throws Error in words where it is none
 */
export function readPort(text: string | undefined): number {
  if (text === undefined || text === "") return PORT;
  const port = /^\d{1,5}$/.test(text) ? Number(text) : NaN;
  if (port <= 65_535) return port;
  throw new Error(`PORT is “${text}”, which is no port: a whole number from 0 to 65535.`);
}
