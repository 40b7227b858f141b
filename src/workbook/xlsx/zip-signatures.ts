/** What the records of a zip archive begin with (APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16). */
export const LOCAL = 0x04034b50;
export const DIRECTORY = 0x02014b50;
export const END = 0x06054b50;
