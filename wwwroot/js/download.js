// Saves what the page made under a name, as a download of the browser.
export async function save(name, stream) {
  const bytes = await stream.arrayBuffer();
  const address = URL.createObjectURL(new Blob([bytes]));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10000);
}
