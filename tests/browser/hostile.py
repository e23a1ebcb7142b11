"""Words that would run, break out or mislead if some page took them for markup. Each sets ``window.hit`` where it runs."""

import json
from pathlib import Path

STRINGS = (
    "<script>window.hit=1</script>",
    "</script><script>window.hit=1</script>",
    "<!--<script>window.hit=1//",
    "--><script>window.hit=1</script>",
    "<img src=x onerror=window.hit=1>",
    '"><svg onload=window.hit=1>',
    "' onmouseover='window.hit=1' autofocus onfocus='window.hit=1",
    "</textarea><script>window.hit=1</script>",
    "</title><script>window.hit=1</script>",
    "</style><script>window.hit=1</script>",
    "<iframe srcdoc='<script>parent.hit=1</script>'></iframe>",
    "<details open ontoggle=window.hit=1>",
    "<input autofocus onfocus=window.hit=1>",
    "<a href=javascript:window.hit=1>read more</a>",
    "<base href=https://elsewhere.example/>",
    '<meta http-equiv="refresh" content="0;url=https://elsewhere.example/">',
    "<link rel=stylesheet href=https://elsewhere.example/a.css>",
    "<style>body{display:none}</style>",
    '<form action=https://elsewhere.example><button id="more">send</button></form>',
    '<math><mtext><table><mglyph><style><!--</style><img title="--&gt;&lt;img src=1 onerror=window.hit=1&gt;">',
    "<template><script>window.hit=1</script></template>",
    "&lt;script&gt;window.hit=1&lt;/script&gt;",
    "{{ 7*7 }}{% for x in range(9) %}x{% endfor %}${window.hit=1}",
    "javascript:window.hit=1",
    "data:text/html,<script>window.hit=1</script>",
    '\\u003cscript\\u003e";window.hit=1;//',
    "__proto__",
    "constructor",
    "]]><![CDATA[<script>window.hit=1</script>",
    "\u202edesrever\u202c and \u2028 lines",
)

# What such an address must never become is a link.
ADDRESSES = (
    "javascript:window.hit=1",
    "JaVaScRiPt:window.hit=1//https://a.example",
    "\x01javascript:window.hit=1",
    "data:text/html,<script>window.hit=1</script>",
    "vbscript:x",
    "file:///etc/passwd",
    "https:",
    "//elsewhere.example",
    "http://[broken",
)


def write_point_set(path: Path) -> None:
    """A point set, sound in form, that holds the strings wherever words may stand."""
    every = " ".join(string for string in STRINGS if "\u202e" not in string)
    rows = [
        "[work]",
        f"title = {json.dumps('Hostile ' + every)}",
        f"author = {json.dumps(STRINGS[0])}",
        f"also_titled = [{json.dumps(STRINGS[5])}]",
        "[[editions]]",
        'id = "trade"',
        f"name = {json.dumps(STRINGS[1])}",
        f"publisher = {json.dumps(STRINGS[4])}",
        'kind = "trade"',
        "printings = 2",
        f"note = {json.dumps(every)}",
        "[[points]]",
        'id = "constructor"',
        'part = "book"',
        f"place = {json.dumps(STRINGS[5])}",
        'feature = "other"',
        'source = "javascript:window.hit=1"',
        f"note = {json.dumps(every)}",
        "[[points.readings]]",
        f"value = {json.dumps(STRINGS[1])}",
        'copies = ["trade:1"]',
        "[[points.readings]]",
        f"value = {json.dumps(STRINGS[2])}",
        'copies = ["trade:2"]',
    ]
    path.write_text("\n".join(rows), encoding="utf-8")
