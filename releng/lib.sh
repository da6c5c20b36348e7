# What the scripts share: finding or installing what they need, and building when sources changed. Sourced; $root is the project's folder.

. "$root/releng/culm.product/start/java.sh"

readonly maven_version=3.9.11
readonly work=$root/.build
readonly stamp=$work/built

say() { echo "culm: $*" >&2; }
fail() { say "$*"; exit 2; }

# The platform this machine is, in Eclipse's words, as "os/ws/arch".
platform() {
  local arch
  case $(uname -m) in aarch64 | arm64) arch=aarch64 ;; *) arch=x86_64 ;; esac
  case $(uname) in Darwin) echo "macosx/cocoa/$arch" ;; *) echo "linux/gtk/$arch" ;; esac
}
here_platform=$(platform)
product=$root/releng/culm.product/target/products/culm/$here_platform
[ "$(uname)" != Darwin ] || product+=/Eclipse.app/Contents/Eclipse
readonly here_platform product

has_display() { [ "$(uname)" = Darwin ] || [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; }

# install WHY PACKAGE...: through apt where that can be done, saying so; elsewhere names what is missing and ends.
install() {
  local why=$1 log=$work/install.log
  shift
  if [ "$(id -u)" != 0 ] || ! command -v apt-get >/dev/null; then
    fail "$why. Please install it (on Debian the packages are: $*)"
  fi
  say "$why; installing $*"
  mkdir -p "$work"
  {
    [ -n "$(ls /var/lib/apt/lists/*_Packages* 2>/dev/null)" ] || apt-get update
    DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@" ||
      { apt-get update && DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@"; }
  } >"$log" 2>&1 || { tail "$log" >&2; fail "installing $* failed; all of it is in $log"; }
}

need_java() {
  find_java || { install "Java $java_needed or newer is needed" openjdk-17-jre-headless; find_java; }
}

# A compiler too, for the modules that are tested as plain Java.
need_jdk() {
  need_java
  [ -x "$JAVA_HOME/bin/javac" ] || { install "a Java development kit is needed" openjdk-17-jdk-headless; find_java; }
}

# Sets $mvn to a Maven that the build's plug-ins accept. An older one, as Debian has it, is used once to fetch a newer.
need_maven() {
  local own=$HOME/.m2/culm/apache-maven-$maven_version version
  mvn=$own/bin/mvn
  [ ! -x "$mvn" ] || return 0
  command -v mvn >/dev/null || install "Maven is needed to build" maven
  version=$(mvn -v 2>/dev/null | sed -n 's/^.*Apache Maven \([0-9]*\)\.\([0-9]*\).*/\1 \2/p')
  if [ "${version% *}" -gt 3 ] || { [ "${version% *}" = 3 ] && [ "${version#* }" -ge 9 ]; }; then
    mvn=$(command -v mvn)
    return 0
  fi
  say "fetching Maven $maven_version, since this one is too old"
  mkdir -p "$work"
  rm -rf "$own"
  (cd "$work" && mvn -B -ntp dependency:unpack -Dartifact="org.apache.maven:apache-maven:$maven_version:zip:bin" \
    -DoutputDirectory="${own%/*}") >"$work/maven.log" 2>&1 || { tail "$work/maven.log" >&2; fail "Maven could not be fetched"; }
  rm -rf "$work/\${project.basedir}"
  chmod +x "$mvn"
}

need_window() {
  [ "$(uname)" = Linux ] || return 0
  { ldconfig -p 2>/dev/null || /sbin/ldconfig -p; } | grep 'libgtk-3\.so\.0' >/dev/null ||
    install "the window needs GTK 3" libgtk-3-0 fonts-dejavu-core
}

need_virtual_display() {
  command -v Xvfb >/dev/null || install "the tests need a virtual display" xvfb
}

# maven ARGUMENT...: runs Maven on this project, for this machine's platform.
maven() {
  local os ws arch
  IFS=/ read -r os ws arch <<<"$here_platform"
  (cd "$root" && "$mvn" -B -ntp -Dculm.os="$os" -Dculm.ws="$ws" -Dculm.arch="$arch" "$@")
}

# Lists the files that the program is made from; further arguments are conditions of find.
sources() {
  find "$root/pom.xml" "$root/bundles" "$root/features" "$root/releng" "$root/examples" \
    \( -name target -o -name src-gen -o -name bin -o -name '.*' \) -prune -o -type f "$@" -print
}

# True when the program was built after the last change to any source; the stamp holds a sum over their names.
is_built() {
  [ -f "$stamp" ] && [ -f "$product/culm" ] && [ -z "$(sources -newer "$stamp")" ] && [ "$(sources | cksum)" = "$(<"$stamp")" ]
}

# Builds the program unless that is done; one build at a time. CULM_BUILD=never runs what is there.
ensure_built() {
  [ "${CULM_BUILD:-}" != never ] || return 0
  ! is_built || return 0
  mkdir -p "$work"
  if command -v flock >/dev/null; then
    exec 9>"$work/lock"
    flock 9
    if is_built; then exec 9>&-; return 0; fi
  fi
  need_java
  need_maven
  build
  exec 9>&-
}

build() {
  local began=$SECONDS
  say "building (the first time takes a few minutes, since it fetches libraries)"
  sources | cksum >"$work/begun"
  # From scratch: the compiler looks at changed files only, and would miss what their change breaks elsewhere.
  maven clean package -Dculm.quick -Dmaven.test.skip=true >"$work/build.log" 2>&1 </dev/null ||
    { grep -E '^\[ERROR\]' "$work/build.log" | head -n 20 >&2; fail "the build failed; all it said is in $work/build.log"; }
  prime
  mv "$work/begun" "$stamp"
  say "built in $((SECONDS - began)) s"
}

# Runs the product twice: the first run settles its configuration, the second records the classes it loads, for quicker starts.
prime() {
  local example=$root/examples/studio/trial-12.reed
  rm -rf "$product"/configuration/org.eclipse.* "$product/command.jsa"
  find_java
  "$JAVA_HOME/bin/java" -jar "$product"/plugins/org.eclipse.equinox.launcher_*.jar -application culm.cli.app -nosplash -data @none help >/dev/null
  CULM_ARCHIVE=$product/command.jsa "$product/culm" report "$example" >/dev/null 2>"$work/prime.log" || true
  [ -f "$product/command.jsa" ] || say "no class archive was made, so starts are slower; see $work/prime.log"
}
