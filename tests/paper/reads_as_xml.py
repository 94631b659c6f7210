#!/usr/bin/python3
"""What two parsers say about pages that bear hostile names: Python's XML parser (expat) and its
HTML parser.

Usage: reads_as_xml.py COUNT FOLDER     fails unless the folder holds so many files, each is
well-formed, consists of the elements and attributes below and no others, and names nothing outside.
"""

import html.parser
import pathlib
import re
import sys
import xml.etree.ElementTree as tree

HTML, SVG = "{http://www.w3.org/1999/xhtml}", "{http://www.w3.org/2000/svg}"
ELEMENTS = {HTML + name for name in
            "html head meta title style body header div h1 h2 p b span bdi section table tbody tr td "
            "ul li footer img".split()}
ELEMENTS |= {SVG + name for name in
             "svg g defs linearGradient stop clipPath rect line path circle polygon text".split()}
ATTRIBUTES = set("src alt lang charset name content class xmlns width height viewBox role x y x1 y1 x2 y2 cx "
                 "cy r rx d points fill stroke id offset font-family font-weight font-size clip-path "
                 "stroke-width stroke-dasharray stroke-linejoin stroke-linecap stop-color "
                 "stop-opacity text-anchor textLength lengthAdjust".split())
OUTSIDE = re.compile(r"https?:|//|javascript:|data:|@import|url\((?!#trail(?:-\d+)+\))", re.I)


class AsHtml(html.parser.HTMLParser):
    """Every element, as a parser that forgives everything sees them."""

    def __init__(self):
        super().__init__()
        self.names = []

    def handle_starttag(self, tag, attributes):
        self.names.append(tag)

    def handle_startendtag(self, tag, attributes):
        self.names.append(tag)


def check(path):
    bytes_there = path.read_bytes()
    root = tree.fromstring(bytes_there)
    names = []
    for element in root.iter():
        assert element.tag in ELEMENTS, (path, element.tag)
        names.append(element.tag.split("}")[1].lower())
        for name, value in element.attrib.items():
            assert name in ATTRIBUTES, (path, name)
            assert not OUTSIDE.search(value), (path, name, value)
        if element.tag.endswith("}style"):
            assert not OUTSIDE.search(element.text), path
            assert not re.search("[<>&\"']", element.text), path
    as_html = AsHtml()
    as_html.feed(bytes_there.decode())
    assert as_html.names == names, (path, set(as_html.names) ^ set(names))
    controls = [c for c in bytes_there.decode() if c != "\n" and (c < " " or "\x7f" <= c < "\xa0")]
    assert not controls, (path, controls)


count, folder = int(sys.argv[1]), pathlib.Path(sys.argv[2])
pages = sorted(folder.iterdir())
assert len(pages) == count > 0, len(pages)
for page in pages:
    check(page)
