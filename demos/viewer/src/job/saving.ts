/** ms after which what was saved may be let go: by then it has been written. */
const written = 10_000;

/** Gives the maker a file to keep. */
export function save({
  name,
  type,
  content,
}: {
  readonly name: string;
  readonly type: string;
  readonly content: string | Uint8Array;
}): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), written);
}
