"use strict";

/* The listing as a report has it, from the data beside it. */
document.getElementById("view").replaceChildren(listingView(island("detail"), island("points")));
