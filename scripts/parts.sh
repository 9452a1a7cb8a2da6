# shellcheck shell=bash disable=SC2154
# Shared by ./check and ./try (sourced, not run): runs the parts of a longer piece of work one after
# another, each with its own log, and sums them up at the end.
#
# Set before use: $root (the checkout) and $logs (a folder for the logs).

part_names=()
part_results=()
part_seconds=()
failed_parts=0
began=$SECONDS

# "95" -> "1 min 35 s"
spell_seconds() {
    if (($1 < 60)); then
        printf '%d s' "$1"
    else
        printf '%d min %02d s' "$(($1 / 60))" "$(($1 % 60))"
    fi
}

# part NAME COMMAND...: runs the command with its output in $logs/NAME.log. Says how it went; where
# it failed, shows the last lines. Returns the command's success.
part() {
    local name=$1 start=$SECONDS log result="ok"
    shift
    log=$logs/$name.log
    printf '  %-14s' "$name"
    "$@" >"$log" 2>&1 </dev/null || result=FAILED
    part_names+=("$name")
    part_results+=("$result")
    part_seconds+=("$((SECONDS - start))")
    printf '%-8s%s\n' "$result" "$(spell_seconds "$((SECONDS - start))")"
    if [[ $result == FAILED ]]; then
        failed_parts=$((failed_parts + 1))
        printf '\n--- the last lines of %s\n' "${log#"$root/"}"
        # Of a test run, the tests that passed say nothing here.
        grep -vE '^ *Start +[0-9]+: |\.+ +Passed +[0-9.]+ sec *$' "$log" | tail -n 40
        printf -- '---\n\n'
        return 1
    fi
}

# part_aloud NAME COMMAND...: the same for a command that speaks for itself and may have to ask (sudo
# for a password): its output and its input are this terminal's.
part_aloud() {
    local name=$1 start=$SECONDS result="ok"
    shift
    "$@" || result=FAILED
    part_names+=("$name")
    part_results+=("$result")
    part_seconds+=("$((SECONDS - start))")
    if [[ $result == FAILED ]]; then
        failed_parts=$((failed_parts + 1))
        return 1
    fi
    printf '  %-14s%-8s%s\n' "$name" "$result" "$(spell_seconds "$((SECONDS - start))")"
}

# One line per part and the whole time.
sum_up() {
    local k
    printf '\nWhat happened\n'
    for k in "${!part_names[@]}"; do
        printf '  %-14s%-8s%12s\n' "${part_names[k]}" "${part_results[k]}" \
            "$(spell_seconds "${part_seconds[k]}")"
    done
    printf '  %-22s%12s\n' "in all" "$(spell_seconds "$((SECONDS - began))")"
}

# Builds a preset: configure, then the given targets (all where none is named).
build_preset() {
    local preset=$1
    shift
    cmake --preset "$preset" && cmake --build --preset "$preset" ${1:+--target "$@"}
}
