"use strict";

/* Says how many files are chosen, and that they are being read. The browser itself sends the form and takes dropped files. */
(() => {
  const form = document.getElementById("batch");
  const field = form.files;
  const state = document.getElementById("state");
  const zone = form.querySelector(".drop");
  field.addEventListener("change", () => {
    state.textContent = field.files.length === 1 ? field.files[0].name : `${field.files.length} files`;
  });
  form.addEventListener("submit", (event) => {
    const size = [...field.files].reduce((sum, file) => sum + file.size, 0);
    const fits = size < Number(form.dataset.most);
    if (!fits) event.preventDefault();
    state.textContent = fits ? "They are being read." : "That is too much at a time: auditor scan reads batches of any size.";
  });
  addEventListener("dragover", (event) => {
    event.preventDefault();
    zone.classList.add("over");
  });
  addEventListener("dragleave", () => zone.classList.remove("over"));
  addEventListener("drop", (event) => {
    event.preventDefault();
    zone.classList.remove("over");
    if (!event.dataTransfer.files.length) return;
    field.files = event.dataTransfer.files;
    field.dispatchEvent(new Event("change"));
  });
})();
