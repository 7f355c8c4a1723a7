// Puts text on the clipboard; false when the browser does not let us, so that the page can say so.
export async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
