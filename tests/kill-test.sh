#!/usr/bin/env bash
# Kills a program that saves, in the middle of a hundred saves, fifty times over: no save that was acknowledged may be
# lost, and the file must be sound. Then shows that the check can fail, by dropping one acknowledged save on purpose.
set -euo pipefail
cd "$(dirname "$0")/.."
kills="${1:-50}"
folder="$(mktemp -d)"
trap 'rm -rf "$folder"' EXIT
dotnet build -v q --nologo tests/Barshow.Data.KillTest >&2
program() { dotnet run --no-build --project tests/Barshow.Data.KillTest -- "$@"; }

program run "$folder/kept" "$kills"

if program run "$folder/dropped" 1 --drop; then
  echo "A save was dropped on purpose and the check did not see it." >&2
  exit 1
fi
echo "A save that was dropped on purpose was seen."
