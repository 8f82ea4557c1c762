"""Node and the packer's own modules: only who writes the pack has them."""

from __future__ import annotations

import shutil

import pytest

from webapp.shipping import build


def are_tools_there() -> bool:
    """Return whether Node is there, and the packer's own modules with it."""
    return shutil.which("node") is not None and (build.TOOLS / "node_modules" / "esbuild").is_dir()


needs_tools = pytest.mark.skipif(not are_tools_there(), reason="needs Node's tools: npm ci --prefix .browser")
