#!/usr/bin/env bash
# Makes what is shipped, from the root of the sources or anywhere: publish.sh FOLDER [linux-x64] [linux-arm64]
#   FOLDER/<runtime>/swapsolver             the console, with its service in FOLDER/<runtime>/service; nothing else has to be installed
#   FOLDER/<runtime>/swapsolver.service     the unit for systemd
#   FOLDER/Containerfile                    builds an image of the service from these folders, without any network
#   FOLDER/tool/*.nupkg                     the console as a dotnet tool, for this machine's runtime
#   FOLDER/sbom-service.json, -console.json  what they are made of (CycloneDX)
set -euo pipefail
[ "$#" -ge 1 ] || { sed -n 2,8p "$0" >&2; exit 2; }
out="$(mkdir -p "$1" && cd "$1" && pwd)"
shift
here="$(cd "$(dirname "$0")" && pwd)"
cd "$here/../../.."
runtimes=("$@")
[ "${#runtimes[@]}" -gt 0 ] || runtimes=(linux-x64 linux-arm64)

for runtime in "${runtimes[@]}"; do
    rm -rf "${out:?}/$runtime"
    common=(-c Release -r "$runtime" --self-contained -p:UseCurrentRuntimeIdentifier=false -p:AppendRuntimeIdentifierToOutputPath=true -p:PublishReadyToRun=true -p:RunAnalyzers=false --nologo -v quiet)
    dotnet publish clients/SwapSolver.Console "${common[@]}" -p:EmbedsService=false -o "$out/$runtime"
    dotnet publish src/SwapSolver.Service "${common[@]}" -o "$out/$runtime/service"
    cp "$here/swapsolver.service" "$out/$runtime/"
done

cp "$here/Containerfile" "$out/"
dotnet pack clients/SwapSolver.Console -c Release -p:RunAnalyzers=false --nologo -v quiet -o "$out/tool"
dotnet tool restore
for made in src/SwapSolver.Service:service clients/SwapSolver.Console:console; do
    project="${made%%:*}"
    dotnet tool run dotnet-CycloneDX -- "$project/$(basename "$project").csproj" --output "$out" --filename "sbom-${made#*:}.json" --output-format Json --set-name "$(basename "$project")" >/dev/null
done
