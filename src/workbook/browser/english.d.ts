/** The grid's own words; the library describes this file under another name alone. */
declare module "@univerjs/preset-sheets-core/lib/es/locales/en-US.js" {
  const english: import("@univerjs/presets").ILanguagePack;
  export default english;
}
