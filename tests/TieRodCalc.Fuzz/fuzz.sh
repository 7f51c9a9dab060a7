#!/usr/bin/env bash
# Coverage-guided fuzzing of one reader: builds it, instruments a copy, lets the fuzzer run, and repeats what it has found.
# fuzz.sh TARGET SECONDS: length, thread, values, parts, job, figures; or planted, a reader with a fault that must be found.
# All that it writes is under artifacts/fuzz. Exit status 0 where nothing was found, 1 where something was.
set -euo pipefail
target=${1:?usage: fuzz.sh TARGET SECONDS}
seconds=${2:?usage: fuzz.sh TARGET SECONDS}
root=$(cd "$(dirname "$0")/../.." && pwd)
cd "$root"
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
out=$root/artifacts/fuzz
work=$out/$target

command -v afl-fuzz >/dev/null || (apt-get update && apt-get install -y --no-install-recommends afl++)

# What is published stays as it is, for the replay; a copy of it is instrumented. FUZZ_BUILT=1 takes those of the last run.
if [ "${FUZZ_BUILT:-}" != 1 ] || [ ! -d "$out/instrumented" ]; then
  rm -rf "$out/plain" "$out/instrumented"
  dotnet tool restore
  dotnet publish tests/TieRodCalc.Fuzz -c Release -o "$out/plain" --nologo -v quiet
  cp -r "$out/plain" "$out/instrumented"
  for assembly in TieRodCalc TieRodCalc.Yaml YamlDotNet; do
    dotnet sharpfuzz "$out/instrumented/$assembly.dll"
    # The tool ends well where it could not do it.
    if cmp -s "$out/plain/$assembly.dll" "$out/instrumented/$assembly.dll"; then
      echo "$assembly was not instrumented" >&2
      exit 1
    fi
  done
fi

rm -rf "$work"
mkdir -p "$work"
dotnet "$out/plain/TieRodCalc.Fuzz.dll" inputs "$target" "$work"

# Jobs name their part files from the folder of the samples.
cd "$root/catalog-samples/jobs"
export AFL_NO_UI=1 AFL_NO_AFFINITY=1 AFL_SKIP_CPUFREQ=1 AFL_SKIP_BIN_CHECK=1 AFL_I_DONT_CARE_ABOUT_MISSING_CRASHES=1
export AFL_FORKSRV_INIT_TMOUT=120000 DOTNET_TieredPGO=0
afl-fuzz -i "$work/inputs" -o "$work/found" -x "$work/words.dict" -t 10000 -m none -V "$seconds" -- \
  dotnet "$out/instrumented/TieRodCalc.Fuzz.dll" fuzz "$target" >"$work/fuzzer.log" 2>&1 || (tail -n 30 "$work/fuzzer.log" && exit 1)

grep -E '^(run_time|execs_done|corpus_count|corpus_found|edges_found|stability|saved_crashes|saved_hangs) ' "$work/found/default/fuzzer_stats"
shopt -s nullglob
dotnet "$out/plain/TieRodCalc.Fuzz.dll" replay "$target" "$work"/found/default/{queue,crashes,hangs}/id*
