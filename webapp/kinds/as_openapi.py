"""Kinds -> OpenAPI 3.1 description of the API, by apispec from the same marshmallow schemas."""

from __future__ import annotations

from collections.abc import Mapping

from apispec import APISpec
from apispec.ext.marshmallow import MarshmallowPlugin

import webapp.kinds
from webapp.kinds import as_card, as_schema

_ASCII = "^[ -~]+$"
# Latin, Greek and Cyrillic without what does not print. The server takes any letter that prints, which no pattern says.
_PRINTED = "^[ -~¡-¬®-ͷЀ-ԯ]*$"


def spec(version: str = "1") -> dict[str, object]:
    """Return the API description as JSON-able data, every kind's values among its schemas."""
    api = APISpec(
        title="Cellarslate",
        version=version,
        openapi_version="3.1.0",
        plugins=[MarshmallowPlugin()],
        info={"description": "Hand-in, cards for the phones, files of the desk. In words: docs/hand-in.md."},
    )
    schemas = api.components
    for name, schema in [
        ("Entry", as_schema.EntrySchema), ("HandIn", as_schema.HandInSchema),
        ("Receipt", as_schema.ReceiptSchema), ("Error", as_schema.ErrorSchema),
        ("Cards", as_card.CardsSchema),
    ]:
        schemas.schema(name, schema=schema)
    for kind in webapp.kinds.ALL:
        schemas.schema(f"{as_schema._camel(kind.name)}Values", schema=as_schema.values_schema(kind))
    schemas.security_scheme("device", {"type": "apiKey", "in": "cookie", "name": "cellarslate_device"})
    schemas.security_scheme("readingKey", {"type": "http", "scheme": "bearer"})
    schemas.security_scheme("keyInAddress", {"type": "apiKey", "in": "query", "name": "key"})
    schemas.security_scheme("person", {"type": "apiKey", "in": "cookie", "name": "cellarslate"})
    _paths(api)
    _reading_paths(api)
    _desk_paths(api)
    described = api.to_dict()
    described["components"]["schemas"]["HandIn"]["properties"]["entries"]["items"] = _ref("Entry")
    described["components"]["schemas"]["Entry"]["properties"]["kind"]["enum"] = [k.name for k in webapp.kinds.ALL]
    return described


def _ref(name: str) -> dict[str, str]:
    return {"$ref": f"#/components/schemas/{name}"}


def _json(schema: Mapping[str, object], words: str) -> dict[str, object]:
    return {"description": words, "content": {"application/json": {"schema": schema}}}


def _errors(*statuses: int) -> dict[str, object]:
    words = {400: "Not readable.", 401: "Not let in.", 403: "Not from our pages, or not let in.", 404: "No such thing.",
             409: "Not from this side.",
             413: "Too large; halve it.", 415: "Not JSON.", 422: "Not a batch.", 429: "Too often; wait.",
             503: "No room; wait."}
    return {str(status): _json(_ref("Error"), words[status]) for status in statuses}


def _paths(api: APISpec) -> None:
    device: list[dict[str, list[str]]] = [{"device": []}]
    api.path("/api/hand-in", operations={"post": {
        "operationId": "handIn", "security": device, "summary": "Hand in a batch of entries.",
        "requestBody": {"required": True, **_json(_ref("HandIn"), "The batch.")},
        "responses": {"200": _json(_ref("Receipt"), "One result per entry."),
                      **_errors(400, 401, 403, 413, 415, 422, 429)},
    }})
    since = {"name": "since", "in": "query", "required": False,
             "schema": {"type": "integer", "minimum": 0, "maximum": 2**53 - 1}}
    known = {"name": "goods", "in": "query", "required": False,
             "schema": {"type": "string", "maxLength": 64, "pattern": "^[ -~]*$"}}
    api.path("/api/cards", operations={"get": {
        "operationId": "cards", "security": device, "summary": "Cards changed since a cursor.",
        "parameters": [since, known],
        "responses": {"200": _json(_ref("Cards"), "Cards."), **_errors(400, 401)},
    }})
    api.path("/api/session", operations={"get": {
        "operationId": "session", "summary": "Who is asking.",
        "responses": {"200": _json({"type": "object", "required": ["marker", "ok"]}, "Device and person.")},
    }})
    token = {"type": "object", "required": ["token"],
             "properties": {"token": {"type": "string", "minLength": 1, "maxLength": 200, "pattern": _ASCII},
                            "name": {"type": "string", "maxLength": 40, "pattern": _PRINTED}}}
    api.path("/api/enrol", operations={"post": {
        "operationId": "enrol", "summary": "Let a phone in by its one-time token.",
        "requestBody": {"required": True, **_json(token, "Token and name.")},
        "responses": {"200": _json({"type": "object", "required": ["marker", "ok"]}, "The device."),
                      **_errors(400, 401, 403, 413, 415, 422, 429)},
    }})
    coordinate = {"type": "string", "minLength": 43, "maxLength": 43, "pattern": "^[A-Za-z0-9_-]*$"}
    key = {"type": "object", "required": ["x", "y", "from_seq"],
           "properties": {"x": coordinate, "y": coordinate,
                          "from_seq": {"type": "integer", "minimum": 0, "maximum": 2**53 - 1}}}
    api.path("/api/phone-key", operations={"post": {
        "operationId": "phoneKey", "security": device, "summary": "Bring the public half of this phone's key.",
        "requestBody": {"required": True, **_json(key, "The key on P-256, and the counter when it was made.")},
        "responses": {"200": _json({"type": "object", "required": ["marker", "ok", "key"]}, "Its thumbprint."),
                      **_errors(400, 401, 403, 409, 413, 415, 422)},
    }})
    code = {"type": "string", "minLength": 1, "maxLength": 12, "pattern": _ASCII}
    api.path("/api/hand", operations={"post": {
        "operationId": "hand", "security": device, "summary": "Look at the PIN of a person who takes up this phone.",
        "requestBody": {"required": True, **_json(
            {"type": "object", "required": ["person", "pin"], "properties": {"person": code, "pin": code}},
            "The person's code, and the digits typed.")},
        "responses": {"200": _json({"type": "object", "required": ["marker", "ok", "pin"]}, "As a person has it."),
                      **_errors(400, 401, 403, 413, 415, 422, 429)},
    }})
    _enclosure_paths(api, device)
    _label_path(api, device)
    api.path("/api/openapi.json", operations={"get": {
        "operationId": "describe", "summary": "This description.",
        "responses": {"200": _json({"type": "object"}, "OpenAPI 3.1.")},
    }})


def _reading_paths(api: APISpec) -> None:
    """Describe what other tools read by a key."""
    key: list[dict[str, list[str]]] = [{"readingKey": []}]
    number = {"type": "integer", "minimum": 0, "maximum": 2**53 - 1}

    def query(name: str, schema: dict[str, object], words: str) -> dict[str, object]:
        return {"name": name, "in": "query", "required": False, "schema": schema, "description": words}

    kind = query("kind", {"type": "string", "enum": [one.name for one in webapp.kinds.ALL]}, "One kind of entry.")
    period, trace = (
        [{"name": name, "in": "path", "required": True, "schema": {"type": "string", "pattern": pattern}}]
        for name, pattern in [("name", "^[0-9]{4}-(0[1-9]|1[0-2]|Q[1-4])$"), ("key", "^[A-Za-z0-9_-]{1,60}$")]
    )
    parts: list[tuple[str, str, str, list[dict[str, object]], dict[str, object]]] = [
        ("entries", "readEntries", "Entries as handed in, the oldest first, from a cursor on.",
         [query("after", number, "The cursor of the last answer."),
          query("limit", {"type": "integer", "minimum": 1, "maximum": 1000}, "How many, 100 if left out."), kind],
         {"entries": {"type": "array", "items": {"allOf": [_ref("Entry")], "type": "object"}}, "cursor": number,
          "more": {"type": "boolean"}}),
        ("stock", "readStock", "What stands in which vessel.", [],
         {"stock": {"type": "array", "items": {"type": "object", "required": ["mark", "pure_alcohol_l"]}}}),
        ("periods", "readPeriods", "Months and quarters, the newest first.", [],
         {"periods": {"type": "array", "items": {"type": "object", "required": ["name", "is_closed"]}}}),
        ("periods/{name}", "readPeriod", "A period, as stated and as now known.", period,
         {"period": {"type": "object"}}),
        ("trace/{key}", "readTrace", "A whole trace, both ways.", trace, {"trace": {"type": "object"}}),
        ("cards", "readCards", "Cards of vessels that changed since a cursor, without the list of people.",
         [query("since", number, "The cursor of the last answer.")],
         {"cards": {"type": "array", "items": {"type": "object"}}, "cursor": number, "more": {"type": "boolean"},
          "gone": {"type": "array", "items": {"type": "string"}}}),
    ]
    about: dict[str, object] = {"marker": {"const": "cellarslate"}, "ok": {"const": True},
                                "book_id": {"type": "string"}, "server_now": {"type": "string", "format": "date-time"}}
    for path, name, words, parameters, properties in parts:
        answer = {"type": "object", "required": [*about, *properties], "properties": about | properties}
        api.path(f"/api/read/{path}", parameters=parameters, operations={"get": {
            "operationId": name, "security": key, "summary": words,
            "responses": {"200": _json(answer, words), **_errors(400, 401, 403, 404, 422, 429)},
        }})
    files: list[tuple[str, str, str, list[dict[str, object]], str, list[dict[str, list[str]]]]] = [
        ("entries.csv", "readEntriesCsv", "Entries of one kind as CSV. Needs `kind`.",
         [kind | {"required": True},
          query("since", {"type": "string", "format": "date"}, "Received from this day on.")],
         "text/csv", key),
        ("stock.csv", "readStockCsv", "What stands in which vessel, as CSV.", [], "text/csv", key),
        ("periods/{name}.csv", "readPeriodCsv", "A period as CSV.", period, "text/csv", key),
        ("due.ics", "readDue", "What is due, as a calendar (RFC 5545).", [], "text/calendar",
         [*key, {"keyInAddress": []}]),
    ]
    for path, name, words, parameters, mimetype, security in files:
        api.path(f"/api/read/{path}", parameters=parameters, operations={"get": {
            "operationId": name, "security": security, "summary": words,
            "responses": {"200": {"description": words, "content": {mimetype: {"schema": {"type": "string"}}}},
                          **_errors(400, 401, 403, 404, 422, 429)},
        }})


def _enclosure_paths(api: APISpec, device: list[dict[str, list[str]]]) -> None:
    """Describe how pictures, papers and voice notes come and are seen again."""
    name = {"name": "name", "in": "path", "required": True,
            "schema": {"type": "string", "pattern": "^[0-9a-f]{64}$"}, "description": "SHA-256 of the file."}
    piece = {"name": "Content-Range", "in": "header", "required": True,
             "schema": {"type": "string", "pattern": "^bytes [0-9]{1,9}-[0-9]{1,9}/[0-9]{1,9}$"}}
    bytes_: dict[str, object] = {"schema": {"type": "string", "format": "binary"}}
    here = _json({"type": "object", "required": ["marker", "ok", "has", "is_whole"]}, "How much of it is here.")
    read = {"operationId": "enclosure", "security": device, "summary": "A picture, paper or voice note.",
            "responses": {"200": {"description": "The file.", "content": {"*/*": bytes_}}, **_errors(401, 404)}}
    take = {"operationId": "takeEnclosure", "security": device, "summary": "Bring a piece; its entry comes first.",
            "parameters": [piece],
            "requestBody": {"required": True, "content": {"application/octet-stream": bytes_}},
            "responses": {"200": here, **_errors(400, 401, 403, 404, 409, 413, 422, 503)}}
    api.path("/api/enclosures/{name}", parameters=[name], operations={"get": read, "put": take})
    api.path("/api/enclosures/{name}/thumb", parameters=[name], operations={"get": {
        "operationId": "enclosureThumb", "security": device, "summary": "A small picture of a picture.",
        "responses": {"200": {"description": "JPEG.", "content": {"image/jpeg": bytes_}}, **_errors(401, 404)},
    }})
    api.path("/api/enclosures/{name}/place", parameters=[name], operations={"get": {
        "operationId": "enclosurePlace", "security": device, "summary": "How much of one has come.",
        "responses": {"200": here, **_errors(401, 404)},
    }})
    asked = [{"name": one, "in": "query", "required": False, "schema": {"type": "string", "maxLength": 40,
              "pattern": "^[A-Za-z0-9-]*$"}} for one in ("mark", "entry")]
    api.path("/api/enclosures", operations={"get": {
        "operationId": "enclosures", "security": device, "summary": "Those of a vessel or of an entry.",
        "parameters": asked,
        "responses": {"200": _json({"type": "object", "required": ["marker", "ok", "enclosed"]}, "The newest."),
                      **_errors(400, 401)},
    }})


def _label_path(api: APISpec, device: list[dict[str, list[str]]]) -> None:
    """Describe the label of a vessel as a picture."""
    mark = {"name": "mark", "in": "path", "required": True,
            "schema": {"type": "string", "pattern": "^[A-Za-z0-9-]{1,12}$"}, "description": "Of a vessel in use."}
    layout = {"name": "layout", "in": "query", "required": False,
              "schema": {"type": "string", "maxLength": 40, "pattern": "^[a-z0-9-]*$"}, "description": "A roll or tag."}
    picture: dict[str, object] = {"schema": {"type": "string", "format": "binary"}}
    api.path("/api/labels/{mark}.png", operations={"get": {
        "operationId": "label", "security": device, "summary": "The label of a vessel as a picture.",
        "parameters": [mark, layout],
        "responses": {"200": {"description": "PNG at 300 dpi.", "content": {"image/png": picture}},
                      **_errors(400, 401, 404)},
    }})


def _desk_paths(api: APISpec) -> None:
    """Describe the files of the desk: for a person who is signed in; whoever is not is sent to the sign-in page."""
    filters = [
        {"name": name, "in": "query", "required": False, "schema": {"type": "string"}, "description": words}
        for name, words in [
            ("kind", "One kind of entry."), ("mark", "One vessel."), ("person", "One person, by code."),
            ("device", "One phone."), ("since", "Received from this day on."), ("until", "Received before this day."),
        ]
    ]
    period, trace, judging = (
        [{"name": name, "in": "path", "required": True, "schema": {"type": "string"}, "description": words}]
        for name, words in [
            ("name", "A month or a quarter: `2025-09` or `2025-Q3`."),
            ("key", "A mark, a batch, or the id of a load, fill, run, bottling or entry."),
            ("no", "The number of a judging of all entries by other rules."),
        ]
    )
    files: list[tuple[str, str, str, list[dict[str, object]], str, dict[str, object]]] = [
        ("/desk/entries.json", "entriesJson", "Entries as handed in, one JSON object a line.", filters,
         "application/jsonl", {"type": "string"}),
        ("/desk/entries.csv", "entriesCsv", "Entries of one kind: as read, canonical, computed. Needs `kind`.", filters,
         "text/csv", {"type": "string"}),
        ("/desk/bottled.csv", "bottledCsv", "Every removal of bottled goods, newest first.", [],
         "text/csv", {"type": "string"}),
        ("/desk/rules/{no}/entries.csv", "judgingCsv", "Entries that other rules judged otherwise.", judging,
         "text/csv", {"type": "string"}),
        ("/desk/periods/{name}.csv", "periodCsv", "A period: one row a line, as stated and as now known.", period,
         "text/csv", {"type": "string"}),
        ("/desk/periods/{name}.json", "periodJson", "A period with exact microlitres, notices and closes.", period,
         "application/json", _object("period", "site", "months", "closed", "closes", "stated", "now_known", "notices")),
        ("/desk/trace/{key}.csv", "traceCsv", "A trace: the recall list, then the ingredients.", trace,
         "text/csv", {"type": "string"}),
        ("/desk/trace/{key}.json", "traceJson", "A trace: nodes, links with litres of pure alcohol, leaves.", trace,
         "application/json", _object("subject", "pure_alcohol_l", "assumption", "nodes", "back", "on")),
    ]
    pages = {"400": "A filter that means nothing, in a page.", "404": "Nothing of that name, in a page.",
             "422": "No such period, in a page."}
    for path, operation, summary, parameters, sort, schema in files:
        api.path(path, operations={"get": {
            "operationId": operation, "security": [{"person": []}], "summary": summary, "parameters": parameters,
            "responses": {
                "200": {"description": "The file.", "content": {sort: {"schema": schema}}},
                "302": {"description": "Not signed in: to the sign-in page."},
                **{status: {"description": words, "content": {"text/html": {"schema": {"type": "string"}}}}
                   for status, words in pages.items()},
            },
        }})


def _object(*names: str) -> dict[str, object]:
    return {"type": "object", "required": list(names), "properties": {name: {} for name in names}}
