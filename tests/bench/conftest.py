"""Fixtures for the measurements that drive a browser."""

from tests.browser.offline_world import make_phone, phone, proxy, world

__all__ = ["make_phone", "phone", "proxy", "world"]
