"""The search over everything: the page, and the short list under the box while somebody types."""
