#!/usr/bin/env bash
# Makes what is shipped, from the root of the sources or anywhere: publish.sh FOLDER [linux-x64] [linux-arm64]
#   FOLDER/<runtime>/swapsolver             the console, with its service in FOLDER/<runtime>/service; nothing else has to be installed
#                                           (compiled ahead of time, and SwapSolver.Embedded with it, where this machine can link for the
#                                           runtime: then a question is answered in a third of the time)
#   FOLDER/<runtime>/swapsolver.service     the unit for systemd
#   FOLDER/Containerfile                    builds an image of the service from these folders, without any network
#   FOLDER/tool/*.nupkg                     the console as a dotnet tool, for this machine's runtime
#   FOLDER/sbom-service.json, -console.json  what they are made of (CycloneDX)
set -euo pipefail
[ "$#" -ge 1 ] || { sed -n 2,10p "$0" >&2; exit 2; }
out="$(mkdir -p "$1" && cd "$1" && pwd)"
shift
here="$(cd "$(dirname "$0")" && pwd)"
cd "$here/../../.."
runtimes=("$@")
[ "${#runtimes[@]}" -gt 0 ] || runtimes=(linux-x64 linux-arm64)

# The compiler that links programs for a runtime on this machine; fails where there is none.
linker_for() {
    [ "$1" = "linux-$(uname -m | sed 's/x86_64/x64/; s/aarch64/arm64/')" ] || return 1
    command -v clang >/dev/null && echo clang || { command -v gcc >/dev/null && echo gcc; }
}

for runtime in "${runtimes[@]}"; do
    rm -rf "${out:?}/$runtime"
    common=(-c Release -r "$runtime" --self-contained -p:UseCurrentRuntimeIdentifier=false -p:AppendRuntimeIdentifierToOutputPath=true -p:RunAnalyzers=false --nologo -v quiet)
    if linker="$(linker_for "$runtime")"; then
        # A network's service starts seldom and stays: compiled as it runs it weighs 5 MB less, and is ready a tenth later.
        dotnet publish src/SwapSolver.Service "${common[@]}" -o "$out/$runtime/service"
        # Libraries that make code when they run warn of it; what of them the console's service calls is tried by trying every verb on it.
        native=("${common[@]}" -p:PublishAot=true -p:CppCompilerAndLinker="$linker" -p:StripSymbols=true -p:TreatWarningsAsErrors=false "-p:NoWarn=IL2026%3BIL2104%3BIL3050%3BIL3053")
        made="$(mktemp -d)"
        dotnet publish src/SwapSolver.Service "${native[@]}" -o "$made"
        mv "$made/SwapSolver.Service" "$out/$runtime/service/SwapSolver.Embedded"
        rm -rf "$made"
        dotnet publish clients/SwapSolver.Console "${native[@]}" -p:EmbedsService=false -p:DebugType=none -o "$out/$runtime"
        rm -f "$out/$runtime"/*.dbg "$out/$runtime"/*.xml
    else
        echo "$runtime: no compiler here links for it, so the console is compiled when it starts" >&2
        dotnet publish src/SwapSolver.Service "${common[@]}" -p:PublishReadyToRun=true -o "$out/$runtime/service"
        dotnet publish clients/SwapSolver.Console "${common[@]}" -p:PublishReadyToRun=true -p:EmbedsService=false -o "$out/$runtime"
    fi
    cp "$here/swapsolver.service" "$out/$runtime/"
done

cp "$here/Containerfile" "$out/"
dotnet pack clients/SwapSolver.Console -c Release -p:RunAnalyzers=false --nologo -v quiet -o "$out/tool"
dotnet tool restore
for made in src/SwapSolver.Service:service clients/SwapSolver.Console:console; do
    project="${made%%:*}"
    dotnet tool run dotnet-CycloneDX -- "$project/$(basename "$project").csproj" --output "$out" --filename "sbom-${made#*:}.json" --output-format Json --set-name "$(basename "$project")" >/dev/null
done
