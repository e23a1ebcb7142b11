"use strict";

/* Shows the works that hold every word looked for. */
(() => {
  const works = [...document.querySelectorAll("#works > li")];
  const find = document.getElementById("find");
  const found = document.getElementById("found");
  const look = () => {
    const words = find.value.toLocaleLowerCase().split(/\s+/).filter(Boolean);
    works.forEach((work) => (work.hidden = !words.every((word) => work.dataset.words.includes(word))));
    const count = works.filter((work) => !work.hidden).length;
    found.textContent = `${count} work${count === 1 ? "" : "s"}.`;
  };
  find.addEventListener("input", look);
  if (find.value) look();
})();
