"""The kinds of phones and computers that learn to trust the house, and the steps on each, one at a time.

Source: Apple, support article "Trust manually installed certificate profiles in iOS, iPadOS, and visionOS"; Google,
support article "Add & remove certificates" (both from memory). Menus differ between makers and years, so steps name a
word to search for. Not tried on a real phone (docs/operate.md).
"""

from __future__ import annotations

from dataclasses import dataclass

PROFILE, CERTIFICATE = "profile", "certificate"


@dataclass(frozen=True, slots=True)
class Step:
    """One step. `fetch`: the file that a button in it fetches, PROFILE or CERTIFICATE; empty where there is none."""

    words: str
    fetch: str = ""


@dataclass(frozen=True, slots=True)
class PhoneKind:
    """A kind of phone or computer. `not_yet`: what is most often missing where all steps were done and it fails."""

    key: str
    name: str
    steps: tuple[Step, ...]
    not_yet: str


IPHONE = PhoneKind(
    "iphone", "iPhone or iPad",
    (
        Step("In Safari, fetch the profile and tap Allow. Other browsers of this phone cannot take it.", PROFILE),
        Step("Soon after, open Settings. Near its top stands Profile Downloaded (else: General, VPN & Device "
             "Management). Open it, tap Install, and install it."),
        Step("Settings, General, About, at the very bottom Certificate Trust Settings: switch on "
             "Cellarslate local authority. Installing alone is not enough."),
    ),
    "Most often it is installed, but the switch is not on: Settings, General, About, Certificate Trust Settings. If no "
    "switch stands there, the profile was not installed: go back one step.",
)
ANDROID = PhoneKind(
    "android", "Android phone",
    (
        Step("Fetch the certificate. The phone keeps it among its downloads.", CERTIFICATE),
        Step("Open Settings and search for: CA certificate. (Security, Encryption & credentials, Install a "
             "certificate, CA certificate.) Tap Install anyway. A phone without a screen lock asks for one first."),
        Step("Choose the file cellarslate.crt among the downloads. A notice that the network may be watched stays; "
             "it speaks of this certificate."),
    ),
    "Most often it was filed as a Wi-Fi certificate, or as one for VPN and apps, where no browser looks. Search "
    "Settings for CA certificate and install the same file there.",
)
WINDOWS = PhoneKind(
    "windows", "Windows",
    (
        Step("Fetch the certificate and open the file.", CERTIFICATE),
        Step("Install Certificate, Current User, place all in: Trusted Root Certification Authorities."),
        Step("Close all windows of the browser and open this page again."),
    ),
    "It may have been placed elsewhere: choose the place yourself, Trusted Root Certification Authorities.",
)
MAC = PhoneKind(
    "mac", "Mac",
    (
        Step("Fetch the certificate and open the file; Keychain Access takes it.", CERTIFICATE),
        Step("In Keychain Access open Cellarslate local authority, Trust, and set it to Always Trust."),
    ),
    "Taken, but not set to Always Trust: that is most often what is missing.",
)
OTHER = PhoneKind(
    "other", "Linux, another",
    (
        Step("Fetch the certificate.", CERTIFICATE),
        Step("In the browser: Settings, search: certificates. Import it under Authorities; trust it for web sites."),
    ),
    "It may have been imported without the tick that trusts it for web sites.",
)
KINDS = (IPHONE, ANDROID, WINDOWS, MAC, OTHER)
BY_KEY = {kind.key: kind for kind in KINDS}
# The first that the browser's own name holds. An iPad may call itself a Mac; the page's script looks for its touch.
_SIGNS = (("iPhone", IPHONE), ("iPad", IPHONE), ("iPod", IPHONE), ("Android", ANDROID), ("Windows", WINDOWS),
          ("Macintosh", MAC))


def kind_of(user_agent: str, chosen: str = "") -> PhoneKind:
    """Return the kind that was chosen by its key, else the one that the browser names itself."""
    if chosen in BY_KEY:
        return BY_KEY[chosen]
    return next((kind for sign, kind in _SIGNS if sign in user_agent), OTHER)
