import type { Drawing } from "../../drawing/index";

/** A drawing's title as a file's name, on every system. */
export const fileName = (title: string, kind: string): string =>
  `${
    title
      .replace(/[^\p{L}\p{N} .,-]/gu, "")
      .trim()
      .slice(0, 60) || "drawing"
  }.${kind}`;

/** A drawing as a picture of 300 points to the inch, as printers want it. */
export async function pngOf(svg: string, { box }: Drawing): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = Math.round((box.right - box.left) * POINTS_PER_MM);
  canvas.height = Math.round((box.bottom - box.top) * POINTS_PER_MM);
  canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("no picture"))), "image/png"),
  );
}

const POINTS_PER_MM = 300 / 25.4;

/** A file's bytes as letters. */
export async function base64Of(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  let text = "";
  // Piece by piece, for a call takes only so many arguments.
  for (let first = 0; first < bytes.length; first += AT_A_TIME)
    text += String.fromCharCode(...bytes.subarray(first, first + AT_A_TIME));
  return btoa(text);
}

const AT_A_TIME = 10_000;
