/** Why the system refused, in words where there are some, else by its own code. */
export function reason(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return (code && WORDS[code]) ?? code ?? message;
}

const WORDS: Record<string, string> = {
  EACCES: "that is not permitted",
  EPERM: "that is not permitted",
  ENOENT: "its folder is not there",
  ENOTDIR: "its path leads through a file",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "its links lead in a circle",
  ENOSPC: "the disk is full",
  EDQUOT: "the disk is full",
  EFBIG: "it would become too large",
  EROFS: "the disk is for reading only",
};
