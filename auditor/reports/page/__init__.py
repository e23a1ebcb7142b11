"""The report as a page: one self-contained HTML file that works offline, prints, and runs nothing but its own small script."""

from auditor.reports.page.writing import MOST_ROWS, pieces

__all__ = ["MOST_ROWS", "pieces"]
