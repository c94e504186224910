"""The HTTP service against requests drawn from its own document, good ones and bad ones."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import httpx2

_DRAWS = "10"
_RUN = "from schemathesis.cli import schemathesis; schemathesis()"


def test_schemathesis_finds_nothing(client: httpx2.Client, tmp_path: Path) -> None:
    document = client.get("/openapi.json").json()
    # Any string is a chart list to the document; its reader refuses most, see `test_web_answers`.
    for name in ("ParseRequest", "SheetRequest"):
        del document["components"]["schemas"][name]["properties"]["charts"]
    del document["paths"]["/v1/chart-list"]
    # Any bytes are a file to the document; what is none of those that are read is refused.
    taken = document["paths"]["/v1/intake"]["post"]["requestBody"]
    taken["content"] = {"text/plain": {"schema": {"type": "string", "pattern": r"\S"}}}
    place = tmp_path / "openapi.json"
    place.write_text(json.dumps(document), "utf-8")
    options = [
        "--max-examples",
        _DRAWS,
        "--generation-deterministic",
        "--no-color",
        "--warnings",
        "off",
    ]
    ran = subprocess.run(
        [sys.executable, "-c", _RUN, "run", place, "--url", str(client.base_url), *options],
        cwd=tmp_path,
        capture_output=True,
        check=False,
        timeout=120,
    )
    told = ran.stdout.decode() + ran.stderr.decode()
    assert ran.returncode == 0, told
    assert f"Tested: {len(document['paths'])}" in told
    assert "No issues found" in told
    assert client.get("/healthz").status_code == 200
