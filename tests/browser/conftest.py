"""Fixtures for every test that drives a browser."""

from tests.browser.offline_world import make_phone, phone, proxy, world

__all__ = ["make_phone", "phone", "proxy", "world"]
