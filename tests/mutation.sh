#!/usr/bin/env bash
# Changes the code in one place at a time and sees whether a test fails: bash tests/mutation.sh [folder or file of src ...]
# What survived is printed, and stands with the score in TestResults/mutants/. It takes seconds a change, so no other script runs it;
# what it said last is in tests/SwapSolver.Benchmarks/results/mutants.md.
set -euo pipefail
cd "$(dirname "$0")/.."
root="$PWD"
[ "$#" -gt 0 ] || set -- src/SwapSolver.Kitchen/{Balances,Acids,Nutrition,Labels} src/SwapSolver.OrTools/Branching
dotnet tool restore
# The analyzers would judge every change too.
export RunAnalyzers=false
for target in "$@"; do
    target="${target%/}"
    room="$(cut -d/ -f2 <<<"$target")"
    place="$(cut -s -d/ -f3- <<<"$target")"
    case "$place" in *.cs) glob="**/$place" ;; *) glob="**/${place:+$place/}**/*.cs" ;; esac
    [ -f "tests/$room.Tests/stryker-config.json" ] || { echo "tests/$room.Tests has no stryker-config.json, so nothing judges $target" >&2; exit 2; }
    (cd "tests/$room.Tests" && dotnet stryker --mutate "$glob" --output "$root/TestResults/mutants/${target//\//.}" --skip-version-check)
done
