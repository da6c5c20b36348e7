# What releng/opening and releng/edit-speed share: the program with the bundle that measures beside it. Sourced after lib.sh and tests.sh.

# Builds the bundle that measures, against the program as it is, and prints where it lies.
measuring_bundle() {
  maven package -Pmeasure -Dculm.quick -Dmaven.test.skip=true -pl releng/culm.measure -am >"$work/measure.log" 2>&1 </dev/null ||
    { grep '^\[ERROR\]' "$work/measure.log" | head -n 20 >&2; fail "the bundle that measures does not build; see $work/measure.log"; }
  ls "$root"/releng/culm.measure/target/culm.measure-*.jar | grep -v sources | head -n 1
}

# configuration FOLDER BUNDLE [PATTERN]: the program's configuration with that bundle added, without the bundles that match the pattern.
configuration() {
  mkdir -p "$1"
  sed "s|^osgi.bundles=|&reference\\\\:file\\\\:$2@4\\\\:start,|; s|\\\\:file\\\\:plugins/|\\\\:file\\\\:$product/plugins/|" "$product/configuration/config.ini" |
    if [ -n "${3:-}" ]; then sed -E "/^osgi.bundles=/s#,reference\\\\:file\\\\:($3)[^,]*##g"; else cat; fi >"$1/config.ini"
}

# window CONFIGURATION APPLICATION [ARGUMENT...]: runs one, with the options of the start script; $options are added.
window() {
  local configuration=$1 application=$2
  shift 2
  "$JAVA_HOME/bin/java" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -Djava.awt.headless=true -Dorg.eclipse.swt.internal.SessionManagerDBus.disable=true \
    "${window_options[@]}" "${options[@]}" -jar "$product"/plugins/org.eclipse.equinox.launcher_*.jar -application "$application" -nosplash -configuration "$configuration" "$@"
}
