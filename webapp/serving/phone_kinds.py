"""The kinds of phones and computers that learn to trust the house, and the steps on each, one at a time.

Source: Apple, support article "Trust manually installed certificate profiles in iOS, iPadOS, and visionOS"; Google,
support article "Add & remove certificates" (both from memory). Menus differ between makers and years, so steps name a
word to search for. Not tried on a real phone (docs/operate.md).
"""

from __future__ import annotations

from dataclasses import dataclass

from webapp.words.desk import Later

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
    "iphone", Later("access-trust-iphone_or_ipad"),
    (
        Step(Later("access-trust-in_safari_fetch_the_profile"), PROFILE),
        Step(Later("access-trust-soon_after_open_settings_near")),
        Step(Later("access-trust-settings_general_about_at_the")),
    ),
    Later("access-trust-most_often_it_is_installed"),
)
ANDROID = PhoneKind(
    "android", Later("access-trust-android_phone"),
    (
        Step(Later("access-trust-fetch_the_certificate_the_phone"), CERTIFICATE),
        Step(Later("access-trust-open_settings_and_search_for")),
        Step(Later("access-trust-choose_the_file_cellarslate_crt")),
    ),
    Later("access-trust-most_often_it_was_filed"),
)
WINDOWS = PhoneKind(
    "windows", Later("access-trust-windows"),
    (
        Step(Later("access-trust-fetch_the_certificate_and_open"), CERTIFICATE),
        Step(Later("access-trust-install_certificate_current_user_p")),
        Step(Later("access-trust-close_all_windows_of_the")),
    ),
    Later("access-trust-it_may_have_been_placed"),
)
MAC = PhoneKind(
    "mac", Later("access-trust-mac"),
    (
        Step(Later("access-trust-fetch_the_certificate_and_open2"), CERTIFICATE),
        Step(Later("access-trust-in_keychain_access_open_cellarslat")),
    ),
    Later("access-trust-taken_but_not_set_to"),
)
OTHER = PhoneKind(
    "other", Later("access-trust-linux_another"),
    (
        Step(Later("access-trust-fetch_the_certificate"), CERTIFICATE),
        Step(Later("access-trust-in_the_browser_settings_search")),
    ),
    Later("access-trust-it_may_have_been_imported"),
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
