"""Who may do what: people with passwords at the desk, enrolled phones on the floor, headers on every answer."""

from __future__ import annotations

import hashlib

from flask import Flask
from flask.sessions import SecureCookieSessionInterface
from flask_wtf.csrf import CSRFError, CSRFProtect

from webapp.access import again as again  # its pages hang on the blueprint of pages, as those of the next do
from webapp.access import errors, headers, health, journal, pages, secret
from webapp.access import invited as invited
from webapp.access import languages as languages
from webapp.access import passkeys as passkeys
from webapp.access.guard import cookie_name, current, load_current, needs
from webapp.book.house import signed_in
from webapp.words.catalogue import ENGLISH
from webapp.words.desk import t
from webapp.words.language import html_lang, language, offered, read_in

__all__ = ["csrf", "current", "init_app", "needs"]

csrf = CSRFProtect()


class _Sessions(SecureCookieSessionInterface):
    """Session cookies as Flask has them, signed by HMAC-SHA-256 in the place of SHA-1."""

    digest_method = staticmethod(hashlib.sha256)


def init_app(app: Flask) -> None:
    """Set up keys, cookies, request guards, headers and the access pages on this app."""
    app.session_interface = _Sessions()
    app.config["SECRET_KEY"] = secret.load_secret(app.config["DATA_DIR"])
    app.config.update(
        SESSION_COOKIE_NAME=cookie_name("cellarslate", app),
        SESSION_COOKIE_HTTPONLY=True,
        SESSION_COOKIE_SAMESITE="Lax",
        SESSION_COOKIE_SECURE=bool(app.config["TLS"]),
        PERMANENT_SESSION_LIFETIME=signed_in.IDLE,
        # The token lives as long as the session: a form left open over lunch is still good.
        WTF_CSRF_TIME_LIMIT=None,
        WTF_CSRF_SSL_STRICT=False,
    )
    # The API is guarded by origin instead (guard.py): a token in a cached form would be stale at hand-in.
    app.config["WTF_CSRF_CHECK_DEFAULT"] = False
    csrf.init_app(app)
    app.before_request(load_current)
    # What is said after the answer, as the lines of a file that streams, is for machines and in English.
    app.teardown_request(lambda _error: read_in(ENGLISH))
    app.after_request(headers.add_headers)
    journal.init_app(app)
    health.init_app(app)
    app.config.setdefault("PASSKEY_ORIGINS", ())
    app.jinja_env.globals["passkey_place"] = passkeys.place
    app.jinja_env.globals.update(t=t, html_lang=html_lang, languages=offered, language=language)
    app.register_blueprint(pages.bp)
    errors.init_app(app, CSRFError)
