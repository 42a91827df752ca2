#!/usr/bin/env bash
# Writes down what each room shows to others (tests/SwapSolver.House.Tests/Surface/*.txt). The house tests are built before; look at what
# changed (git diff) before it is committed.
set -euo pipefail
cd "$(dirname "$0")/.."
SWAPSOLVER_SURFACE=write dotnet test tests/SwapSolver.House.Tests --no-build --nologo -v quiet --filter FullyQualifiedName~SurfaceTests
