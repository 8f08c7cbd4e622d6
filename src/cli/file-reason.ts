const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EACCES: "permission is refused",
  EPERM: "permission is refused",
  EROFS: "the disk is read-only",
  EISDIR: "it is a folder",
  ENOTDIR: "a file stands where a folder should be",
  ENOSPC: "the disk is full",
  ENAMETOOLONG: "the name is too long",
  ELOOP: "its links go in a circle",
  EFBIG: "a file may not be that long here",
  EDQUOT: "the disk space allowed is used up",
  EMFILE: "too many files are open",
  EIO: "the disk does not answer",
  EEXIST: "a file stands where a folder should be",
};

/** Returns why a file could not be read or written, in words. */
export function reason(thrown: unknown): string {
  const code = (thrown as { code?: string }).code ?? "";
  return REASONS[code] ?? (thrown instanceof Error ? thrown.message : String(thrown));
}
