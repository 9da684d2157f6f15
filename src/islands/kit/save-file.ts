/** How long the browser has to begin reading what it saves, ms. */
const patience = 60_000;

/** Hands `blob` to the reader as a file of that name. */
export const saveFile = (blob: Blob, name: string): void => {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), patience);
};
