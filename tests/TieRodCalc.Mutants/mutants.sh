#!/usr/bin/env bash
# Mutation testing of the library: which changes of one place does no test notice? mutants.sh [ROOM | ROOM/FILE]...
# dotnet-stryker makes the changes, all in one assembly; each is then switched on in a process that stays, since to start the tests for each
# of some thousands would take a day. First the short tests of the library, then, for what is left, its longer ones and those of the command
# line, and at last, with a hundred times the random cases, those that have noticed most in the same file. All that it writes is under artifacts/mutants; results.tsv there has a line for each mutant, and is gone on with where it exists.
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
# Few random cases, so that a mutant takes seconds; a test that needs more of them to pass is left out.
export TIERODCALC_RANDOM_COUNT=40 TIERODCALC_MUTATED_FILES=20 TIERODCALC_ONE_PROCESS=1
[ $# -gt 0 ] || set -- Text Threads Parts Rods Planning Steering
out=$root/artifacts/mutants
built=tests/TieRodCalc.Tests/bin/Release/net10.0/TieRodCalc.dll
mkdir -p "$out"

if [ ! -d "$out/run" ]; then
  # The tool is given one test that reaches nothing, and puts the old assembly back at its end: what it has built is taken on the way.
  dotnet tool restore
  (cd tests/TieRodCalc.Tests && dotnet stryker -p TieRodCalc.csproj --configuration Release -r json --output "$out/made" \
    --test-case-filter 'FullyQualifiedName~PackageTests' $(printf -- '-m **/%s/**/*.cs ' Text Threads Parts Rods Planning Steering)) &
  making=$!
  while kill -0 $making 2>/dev/null; do
    if [ ! -e "$out/mutated.dll" ] && [ -e "$built.stryker-unchanged" ] && cp "$built" "$out/taken.dll" 2>/dev/null; then
      # Whole where it is still the same some seconds later, and not what was there before.
      sleep 5
      ! cmp -s "$built" "$out/taken.dll" || cmp -s "$built" "$built.stryker-unchanged" || mv "$out/taken.dll" "$out/mutated.dll"
    fi
    sleep 1
  done
  dotnet build tests/TieRodCalc.Mutants -c Release --nologo -v quiet
  cp -r tests/TieRodCalc.Mutants/bin/Release/net10.0 "$out/run"
  cp "$out/mutated.dll" "$out/run/TieRodCalc.dll"
fi

mutants=$out/run/TieRodCalc.Mutants
[ -e "$out/tests.tsv" ] || {
  "$mutants" know TieRodCalc.Tests '^(?!.*\.(Schemas\.|Architecture\.(?!NullArgument)))' 2000
  # Those left out start processes, which know nothing of a mutant.
  "$mutants" know TieRodCalc.Cli.Tests '^(?!.*\.(Killed|Process|Descriptor|HostileFile|ManyRuns|Locale|Package|MutatedFile|StaticState|DocumentCommand|New|Completion|BashCompletion|Help))' 2000
} >"$out/tests.new"
[ -e "$out/tests.tsv" ] || mv "$out/tests.new" "$out/tests.tsv"
awk -F'\t' '$2 == "TieRodCalc.Tests" && $1 < 70' "$out/tests.tsv" >"$out/short.tsv"
awk -F'\t' '$2 != "TieRodCalc.Tests" || $1 >= 70' "$out/tests.tsv" >"$out/long.tsv"
left() {
  "$mutants" run "$out/made/reports/mutation-report.json" "$out/results.tsv" "$@"
}
left "$out/short.tsv" 9999 30 "$@"
left "$out/long.tsv" 9999 60 "$@"
awk -F'\t' '$2 == "TieRodCalc.Tests"' "$out/tests.tsv" >"$out/library.tsv"
TIERODCALC_RANDOM_COUNT=4000 left "$out/library.tsv" 5 300 "$@"
