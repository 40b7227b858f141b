/** Hands a file to the browser, as one that was downloaded. */
export function saveFile(file: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  // The browser may still be reading.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
