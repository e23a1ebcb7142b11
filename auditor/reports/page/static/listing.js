"use strict";

const SCORES = ["evidence missing", "contradiction", "overclaim"];

/* One listing, opened. data is auditor.reports.page.detail's; points are those of its work's set, by id. */
function listingView(data, points, level = 3) {
  const section = (name, ...children) => el("section", {}, el(`h${level}`, {}, name), ...children);
  const words = el("blockquote", { class: "words" });
  if (data.title) words.append(el("p", { class: "words-title" }, el("bdi", {}, markedWords(data.title))));
  words.append(el("p", { class: "words-text", dir: "auto" }, markedWords(data.text)));
  const findings = data.findings.map((finding, number) => findingView(finding, number, words, points, data));
  return el(
    "div",
    { class: "listing" },
    el(
      "div",
      { class: "listing-words" },
      section("The words", facts(data), words, legend([...(data.title || []), ...data.text]), claimsTable(data.claims)),
    ),
    el(
      "div",
      { class: "listing-read" },
      section("What they leave open", standing(data)),
      data.ruler ? section("The ruler", ruler(data.ruler)) : null,
      section("Findings", findings.length ? el("ol", { class: "findings" }, findings) : el("p", { class: "soft" }, "None.")),
      data.message ? section("A message to the seller", copyable(data.message, { label: "Message to the seller", rows: lines(data.message) })) : null,
      section("Scores, 0 to 100", scores(data.scores)),
      el("p", { class: "caution" }, document.querySelector("footer .caution").textContent),
    ),
  );
}

function lines(text) {
  return text.split("\n").reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / 64)), 0) + 1;
}

function facts(data) {
  const link = data.link ? el("a", { href: data.link, rel: "noopener noreferrer nofollow", target: "_blank" }, data.link) : data.url;
  const told = [
    ["asked", data.asking],
    ["seller", data.seller],
    ["page", link],
    ["read from", data.source],
  ].filter(([, value]) => value);
  return el("dl", { class: "facts" }, told.map(([name, value]) => el("div", {}, el("dt", {}, name), el("dd", {}, el("bdi", {}, value)))));
}

function standing(data) {
  const left = (part) => {
    if (data[part] === null) return null;
    return el("div", {}, el("dt", {}, `open for the ${part}`), el("dd", {}, data[part] || "nothing: the claims rule each other out"));
  };
  return [
    el("p", { class: "stand" }, sign(data.standing), " ", el("strong", {}, data.standing), `. ${data.meaning}`),
    el(
      "dl",
      { class: "facts" },
      el(
        "div",
        {},
        el("dt", {}, "work"),
        el("dd", {}, data.work ? `${data.doubtful ? "perhaps " : ""}${data.work}` : "no point set speaks of it: general practice alone was weighed"),
      ),
      data.claimed ? el("div", {}, el("dt", {}, "claimed"), el("dd", {}, data.claimed)) : null,
      left("book"),
      left("jacket"),
    ),
  ];
}

function findingView([severity, kind, text, names], number, words, points, data) {
  const marks = [...words.querySelectorAll("[data-findings]")].filter((mark) => mark.dataset.findings.split(" ").includes(String(number)));
  const show = el("button", { type: "button", class: "quiet" }, "Show in the words");
  show.addEventListener("click", () => {
    words.querySelectorAll(".shown").forEach((mark) => mark.classList.remove("shown"));
    marks.forEach((mark) => mark.classList.add("shown"));
    marks[0].setAttribute("tabindex", "-1");
    marks[0].focus({ preventScroll: true });
    marks[0].scrollIntoView({ block: "center", behavior: matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth" });
  });
  const known = names.filter((name) => points && Object.hasOwn(points, name));
  return el(
    "li",
    { class: `finding ${severity}` },
    el("p", {}, el("span", { class: "severity" }, severity), " ", el("strong", {}, kind)),
    el("p", {}, text),
    marks.length ? el("p", { class: "actions" }, show) : null,
    known.length
      ? el(
          "details",
          {},
          el("summary", {}, known.length === 1 ? `The point: ${points[known[0]].place}` : `The ${known.length} points it rests on`),
          known.map((name) => pointView(points[name])),
        )
      : null,
  );
}

function pointView(point) {
  return el(
    "div",
    { class: "point" },
    el("p", {}, el("strong", {}, point.place), ` (${point.part})`),
    el("ul", {}, point.readings.map(([value, copies]) => el("li", {}, el("q", {}, value), `: ${copies}`))),
    point.note ? el("p", {}, `Note: ${point.note}`) : null,
    point.disputed ? el("p", {}, `Disputed: ${point.disputed}`) : null,
    el("p", { class: "soft" }, "Source: ", sourceWords(point.source)),
  );
}

/* A source that is a whole web address is a link, anything else is words. */
function sourceWords(source) {
  return /^https?:\/\/[^\s/?#]+[^\s]*$/.test(source) ? el("a", { href: source, rel: "noopener noreferrer", target: "_blank" }, source) : source;
}

function scores(values) {
  return el(
    "dl",
    { class: "scores" },
    values.map((value, number) =>
      el(
        "div",
        {},
        el("dt", {}, SCORES[number]),
        el("dd", {}, String(value)),
        svg(
          "svg",
          { class: "share", viewBox: "0 0 100 4", preserveAspectRatio: "none", "aria-hidden": "true" },
          svg("rect", { class: "ground", width: 100, height: 4 }),
          svg("rect", { class: "fill-plain", width: value, height: 4 }),
        ),
      ),
    ),
  );
}

function claimsTable(claims) {
  if (!claims.length) return el("p", { class: "soft" }, "No claim was found in them.");
  const rows = claims.map(([words, claim, part, stance]) =>
    el("tr", {}, el("td", {}, el("bdi", {}, words)), el("td", {}, claim), el("td", {}, part), el("td", {}, STANCES[stance][1])),
  );
  return el(
    "details",
    { class: "claims" },
    el("summary", {}, claims.length === 1 ? "The claim, as it was read" : `All ${claims.length} claims, as they were read`),
    el(
      "div",
      { class: "wide", tabindex: "0", role: "group", "aria-label": "Claims" },
      el("table", {}, el("thead", {}, el("tr", {}, ["words", "claim", "part", "how it is said"].map((head) => el("th", { scope: "col" }, head)))), el("tbody", {}, rows)),
    ),
  );
}
