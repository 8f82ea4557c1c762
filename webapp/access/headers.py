"""Headers on every answer: nothing foreign loads, nothing of ours is framed, no script or style stands in a page."""

from __future__ import annotations

from flask import Response, current_app, request

POLICY = "; ".join(
    [
        "default-src 'self'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "style-src 'self'",
        "img-src 'self' data: blob:",
        "media-src 'self' blob:",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'self'",
        "frame-ancestors 'none'",
    ]
)
PERMISSIONS = "camera=(self), microphone=(), geolocation=(), payment=(), usb=(), screen-wake-lock=(self)"


def add(response: Response) -> Response:
    """Return the response with the headers on it. Pages that show the book are never kept by caches."""
    head = response.headers
    head.setdefault("Content-Security-Policy", POLICY)
    head.setdefault("X-Content-Type-Options", "nosniff")
    head.setdefault("X-Frame-Options", "DENY")
    head.setdefault("Referrer-Policy", "same-origin")
    head.setdefault("Permissions-Policy", PERMISSIONS)
    head.setdefault("Cross-Origin-Opener-Policy", "same-origin")
    head.setdefault("Cross-Origin-Resource-Policy", "same-origin")
    if current_app.config["TLS"]:
        head.setdefault("Strict-Transport-Security", "max-age=31536000")
    if request.endpoint != "static":
        head.setdefault("Cache-Control", "no-store")
    return response
