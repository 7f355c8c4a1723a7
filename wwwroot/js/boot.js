// Buttons of the reconnect notice; kept here because the page allows no inline script.
document.addEventListener('click', async (event) => {
  const button = event.target instanceof Element ? event.target.closest('[data-reconnect]') : null;
  if (!button) return;
  const back = await window.Blazor?.reconnect?.().catch(() => false);
  if (!back) location.reload();
});
