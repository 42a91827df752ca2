#!/usr/bin/env bash
# Changes the code in one place at a time and sees whether a test fails: bash tests/mutation.sh [folder or file of src ...]
# What survived is printed, and stands with the score in TestResults/mutants/. It takes seconds a change, so no other script runs it;
# what it said last is in tests/SwapSolver.Benchmarks/results/mutants.md.
set -euo pipefail
cd "$(dirname "$0")/.."
root="$PWD"
[ "$#" -gt 0 ] || set -- src/SwapSolver.Kitchen/{Balances,Acids,Nutrition,Labels,Measures} src/SwapSolver.OrTools/Branching src/SwapSolver.Solving/{Models,Wishes,Panels}
dotnet tool restore
# The analyzers would judge every change too.
export RunAnalyzers=false
for target in "$@"; do
    target="${target%/}"
    room="$(cut -d/ -f2 <<<"$target")"
    place="$(cut -s -d/ -f3- <<<"$target")"
    case "$place" in *.cs) glob="**/$place" ;; *) glob="**/${place:+$place/}**/*.cs" ;; esac
    # Measures are judged by the lines of text too, which other tests read.
    judges="stryker-config.${place%%/*}.json"
    [ -f "tests/$room.Tests/$judges" ] || judges=stryker-config.json
    [ -f "tests/$room.Tests/$judges" ] || { echo "tests/$room.Tests has no $judges, so nothing judges $target" >&2; exit 2; }
    (cd "tests/$room.Tests" && dotnet stryker --config-file "$judges" --mutate "$glob" --output "$root/TestResults/mutants/${target//\//.}" --skip-version-check)
done
