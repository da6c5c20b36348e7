# Finds a Java to run with; sourced by the scripts that start Culm. No program is started, so it costs nothing.

readonly java_needed=17
# While the window opens, the optimising compiler would take from it what it gives: it waits until code has run ten times as often.
readonly window_options=(-XX:Tier4InvocationThreshold=50000 -XX:Tier4MinInvocationThreshold=6000 -XX:Tier4CompileThreshold=150000 -XX:Tier4BackEdgeThreshold=400000)

# The major version of the Java installed in folder $1, or nothing.
java_major() {
  local line
  [ -x "$1/bin/java" ] && [ -r "$1/release" ] || return 0
  while IFS= read -r line; do
    case $line in JAVA_VERSION=*) line=${line#*\"}; line=${line#1.}; echo "${line%%[!0-9]*}"; return 0 ;; esac
  done <"$1/release"
}

# Puts the folder of a Java that is new enough into JAVA_HOME: the one that is set, the one on the path, or any that is installed.
find_java() {
  local home on_path major
  on_path=$(command -v java || true)
  [ -z "$on_path" ] || on_path=$(readlink -f "$on_path")
  for home in "${JAVA_HOME:-}" "${on_path%/bin/java}" /usr/lib/jvm/*17* /usr/lib/jvm/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
    major=$(java_major "$home")
    if [ -n "$major" ] && [ "$major" -ge "$java_needed" ]; then
      export JAVA_HOME=$home
      return 0
    fi
  done
  return 1
}
