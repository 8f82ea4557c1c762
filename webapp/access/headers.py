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
PERMISSIONS = "camera=(self), microphone=(self), geolocation=(), payment=(), usb=(), screen-wake-lock=(self)"


def fixed_headers() -> dict[str, str]:
    """Return the headers that stand on every answer alike, for what a phone keeps of us too."""
    return {
        "Content-Security-Policy": POLICY,
        "X-Content-Type-Options": "nosniff",
        "X-Frame-Options": "DENY",
        "Referrer-Policy": "same-origin",
        "Permissions-Policy": PERMISSIONS,
        "Cross-Origin-Opener-Policy": "same-origin",
        "Cross-Origin-Resource-Policy": "same-origin",
    }


def add_headers(response: Response) -> Response:
    """Return the response with the headers on it. Pages that show the book are never kept by caches."""
    head = response.headers
    for name, value in fixed_headers().items():
        head.setdefault(name, value)
    if current_app.config["TLS"]:
        head.setdefault("Strict-Transport-Security", "max-age=31536000")
    if request.endpoint != "static":
        head.setdefault("Cache-Control", "no-store")
    return response
