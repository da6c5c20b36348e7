# Runs the tests on a display of their own and counts them; sourced after lib.sh.

# start_display [SIZE]: starts a virtual display with the first free number and sets DISPLAY; it ends with the script.
start_display() {
  local number
  mkdir -p "$work"
  # The display writes its number when it stands, so nothing waits by the clock.
  mkfifo "$work/display.$$"
  Xvfb -displayfd 3 -screen 0 "${1:-1280x800}x24" -nolisten tcp 3>"$work/display.$$" >"$work/display.log" 2>&1 &
  display_process=$!
  trap 'kill "$display_process" 2>/dev/null; rm -f "$work/display.$$"' EXIT
  read -r number <"$work/display.$$" || fail "the virtual display did not start; see $work/display.log"
  rm -f "$work/display.$$"
  export DISPLAY=:$number GDK_BACKEND=x11
  unset WAYLAND_DISPLAY
}

# run_tests LONG: all tests of all bundles, then the built program as a process. The program itself is built already.
run_tests() {
  local began=$SECONDS code=0
  start_display
  find "$root/bundles" "$root/releng" -path '*/target/surefire-reports/*' -name 'TEST-*.xml' -delete
  say "testing; all that Maven says is in $work/verify.log"
  CULM_BUILD=never maven verify -Dculm.long="$1" --fail-at-end -pl '!features/culm.feature,!releng/culm.product' \
    </dev/null >"$work/verify.log" 2>&1 || code=1
  grep -E '^(\[[A-Z]+\] )?Tests run:.* in |^\[ERROR\] |^\[INFO\] BUILD' "$work/verify.log" | cut -c 1-400 || true
  totals "$((SECONDS - began))" || code=1
  return "$code"
}

# Sums up the reports, and fails when there are none or one has a failure.
totals() {
  find "$root/bundles" "$root/releng" -path '*/target/surefire-reports/*' -name 'TEST-*.xml' -exec grep -h -m1 '<testsuite ' {} + |
    awk -v seconds="$1" '
      function number(name) { return match($0, " " name "=\"[0-9]+") ? substr($0, RSTART + length(name) + 3, RLENGTH - length(name) - 3) + 0 : 0 }
      { all += number("tests"); bad += number("failures") + number("errors"); left += number("skipped") }
      END {
        printf "all tests took %d s\n%d passed, %d failed, %d skipped\n", seconds, all - bad - left, bad, left
        exit all == 0 || bad > 0
      }'
}
