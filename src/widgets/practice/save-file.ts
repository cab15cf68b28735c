/** Hands the reader a text as a file of their own; it goes nowhere else. */
export function saveFile(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser takes the text when it gets round to it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
