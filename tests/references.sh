#!/usr/bin/env bash
# Runs the tests that hold the code against published tables, and writes tests/REFERENCES.md from what they compared.
# The solution is built before (tests/run.sh does it), and tests/reference-data is fetched.
set -euo pipefail
cd "$(dirname "$0")/.."
SWAPSOLVER_LEDGER="$(mktemp -d)"
export SWAPSOLVER_LEDGER
trap 'rm -rf "$SWAPSOLVER_LEDGER"' EXIT
for project in Data Forecasts Kitchen Lines Solving; do
    filter=()
    [ "$project" != Solving ] || filter=(--filter FullyQualifiedName~Replacing)
    dotnet test "tests/SwapSolver.$project.Tests" --no-build --nologo -v quiet "${filter[@]}"
done
dotnet run --project tests/SwapSolver.Benchmarks --no-build -- --references "$SWAPSOLVER_LEDGER"
