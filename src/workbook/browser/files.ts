import { saveFile } from "../../taskpane/host/save-file";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands a workbook to the browser to be stored where its owner wants it. */
export const download = (name: string, bytes: Uint8Array): void =>
  saveFile(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: XLSX }), name);

export const readFile = async (file: File): Promise<Uint8Array> => new Uint8Array(await file.arrayBuffer());
