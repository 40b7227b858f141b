const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands a file to the browser to be stored where its owner wants it. */
export function download(name: string, bytes: Uint8Array): void {
  const url = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: XLSX }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  URL.revokeObjectURL(url);
}

export const readFile = async (file: File): Promise<Uint8Array> => new Uint8Array(await file.arrayBuffer());
