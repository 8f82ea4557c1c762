"""Why a body is no entry, as a message: the schema (as_schema.py) names each fault by a code, its figures after it."""

from __future__ import annotations

from enum import StrEnum

from webapp.kinds.message import Message, Param, message


class Fault(StrEnum):
    """What the schema says in place of the library's words. The library fills the braces as it checks."""

    MISSING = "missing"
    NULL = "null"
    NO_TEXT = "no_text"
    NO_NUMBER = "no_number"
    NO_MEMBERS = "no_members"
    NO_LIST = "no_list"
    NO_OBJECT = "no_object"
    NO_ID = "no_id"
    NO_TIME = "no_time"
    NO_DIGEST = "no_digest"
    UNKEEPABLE = "unkeepable"
    UNKNOWN = "unknown"
    LONGER = "longer {max}"
    ONE_OF = "one_of {choices}"
    BETWEEN = "between {min} {max}"


_PLAIN = frozenset(fault for fault in Fault if " " not in fault)


def fault_of(named: str) -> Message | str:
    """Return the message of a fault that the schema names. The library's own words are no code, and stay."""
    code, _, rest = named.partition(" ")
    figures: dict[str, Param] = {}
    if code == "longer":
        figures = {"most": int(rest)}
    elif code == "one_of":
        figures = {"choices": rest}
    elif code == "between":
        least, most = rest.split()
        figures = {"least": int(least), "most": int(most)}
    elif named not in _PLAIN:
        return named
    return message(f"fault-{code}", **figures)
