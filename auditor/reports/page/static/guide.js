"use strict";

/* A ruler for each point of a guide page, from the data beside it. */
document.querySelectorAll(".ruler-data").forEach((data) => {
  const read = JSON.parse(data.textContent);
  if (read.book_bars.length + read.jacket_bars.length) data.replaceWith(ruler(read));
});
