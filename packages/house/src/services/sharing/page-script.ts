/**
 * All that runs in the page: amounts for a litre, times the bottle. It asks nothing of anyone; the page's own policy lets it ask nothing. The
 * file's text is hashed into that policy, so it is kept as text, and small enough to be read by whoever gets it.
 */
export const PAGE_SCRIPT = `"use strict";
const box = document.getElementById("bottle");
const wrong = document.getElementById("wrong");
const said = (value, unit) => (value < 20 ? value.toFixed(1) : value.toFixed(0)) + " " + unit;
function reckon() {
  const ml = Number(box.value.trim().replace(",", "."));
  const good = box.value.trim() !== "" && ml >= 1 && ml <= 100000;
  box.setAttribute("aria-invalid", String(!good));
  wrong.textContent = good ? "" : "A bottle requires 1 to 100000 mL.";
  for (const out of document.querySelectorAll("[data-litre]"))
    out.textContent = good ? said((Number(out.dataset.litre) * ml) / 1000, out.dataset.unit) : "–";
}
box.addEventListener("input", reckon);
for (const size of document.querySelectorAll("[data-size]"))
  size.addEventListener("click", () => {
    box.value = size.dataset.size;
    reckon();
  });
for (const shown of document.querySelectorAll("[hidden]")) shown.hidden = false;
reckon();
`;
