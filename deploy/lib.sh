# What the scripts of this folder share. Read with `source`, never run.
# shellcheck shell=bash

# shellcheck disable=SC2034 # the scripts use it
clone=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cache=${XDG_CACHE_HOME:-${HOME:?HOME is not set; set it to your home folder}/.cache}/wetside
export CARGO_TARGET_DIR=${CARGO_TARGET_DIR:-$cache/target}

# The oldest PostgreSQL Wetside runs on.
oldest_major=15

say() { printf '%s\n' "$*"; }

# Something is missing that nobody but the reader can provide.
stop_for_want_of() {
    printf '%s\n' "$*" >&2
    exit 2
}

# Prints the major version of the PostgreSQL programs in a folder.
major_of() { "$1/postgres" --version 2>/dev/null | sed -n 's/.*) \([0-9]*\).*/\1/p'; }

# Prints the folder of the newest PostgreSQL programs, or nothing: what the
# caller named first, then the system's folders, then PATH.
postgres_bin() {
    local folder best='' best_major=$((oldest_major - 1)) major
    if [[ -n ${WETSIDE_POSTGRES_BIN:-} ]]; then
        printf '%s\n' "$WETSIDE_POSTGRES_BIN"
        return
    fi
    for folder in /usr/lib/postgresql/*/bin "$(dirname "$(readlink -f "$(command -v postgres || true)")")"; do
        [[ -x $folder/postgres && -x $folder/initdb ]] || continue
        major=$(major_of "$folder")
        if [[ -n $major ]] && ((major > best_major)); then
            best=$folder best_major=$major
        fi
    done
    [[ -z $best ]] || printf '%s\n' "$best"
}

# The user PostgreSQL runs as: it refuses to run as root.
cluster_account() {
    local name
    if ((EUID != 0)); then
        id -un
        return
    fi
    for name in postgres wetside nobody; do
        if getent passwd "$name" >/dev/null; then
            printf '%s\n' "$name"
            return
        fi
    done
    stop_for_want_of 'PostgreSQL refuses to run as root and this machine has none of the users' \
        'postgres, wetside and nobody. Make one: useradd --system wetside'
}

# Runs a command as another user without logging in, from a folder that user can enter.
run_as() {
    local account=$1 home
    shift
    if [[ $(id -un) == "$account" ]]; then
        (cd / && "$@")
    else
        home=$(getent passwd "$account" | cut -d: -f6)
        (cd / && HOME=$home setpriv --reuid="$account" --regid="$(id -g "$account")" --init-groups -- "$@")
    fi
}

# Whether this user may become root without being asked for a password.
may_be_root() { ((EUID == 0)) || { command -v sudo >/dev/null && sudo -n true 2>/dev/null; }; }

as_root() {
    if ((EUID == 0)); then "$@"; else sudo -n "$@"; fi
}

# Prints the packages of a list of `package:way to tell it is there` that are missing.
# The way is a program, or a path that begins with a slash.
missing_of() {
    local pair package sign
    for pair in "$@"; do
        package=${pair%%:*} sign=${pair#*:}
        case $sign in
        postgres) [[ -n $(postgres_bin) ]] || printf '%s\n' "$package" ;;
        /*) [[ -e $sign ]] || printf '%s\n' "$package" ;;
        *) command -v "$sign" >/dev/null || printf '%s\n' "$package" ;;
        esac
    done
}

# Installs Debian packages. A PostgreSQL that comes with them makes no cluster of
# its own and starts nothing; a cluster that exists is never touched.
install_packages() {
    local conf=/etc/postgresql-common/createcluster.conf
    case " $* " in
    *' postgresql '*)
        if ! grep -Eqs '^[[:space:]]*create_main_cluster[[:space:]]*=[[:space:]]*false' "$conf"; then
            as_root mkdir -p "${conf%/*}"
            printf 'create_main_cluster = false\n' | as_root tee -a "$conf" >/dev/null
        fi
        ;;
    esac
    as_root env DEBIAN_FRONTEND=noninteractive apt-get -q update &&
        as_root env DEBIAN_FRONTEND=noninteractive UCF_FORCE_CONFFOLD=1 \
            apt-get -q install -y --no-install-recommends "$@"
}

# Makes sure of packages, or says which are missing and stops.
need_packages() {
    local missing
    mapfile -t missing < <(missing_of "$@")
    ((${#missing[@]})) || return 0
    if command -v apt-get >/dev/null && may_be_root; then
        install_packages "${missing[@]}" && mapfile -t missing < <(missing_of "$@")
        ((${#missing[@]})) || return 0
    fi
    stop_for_want_of "Missing here, and not installable by this user: ${missing[*]}." \
        "On Debian: apt-get install ${missing[*]}"
}

# Prints where nginx is. Where the system has none, Debian's is unpacked into the
# cache: installed, it would serve at once.
nginx_program() {
    local found fetched unpacked=$cache/nginx
    found=$(PATH=$PATH:/usr/sbin command -v nginx || true)
    if [[ -z $found ]]; then
        found=$unpacked/usr/sbin/nginx
        if [[ ! -x $found ]] && command -v dpkg-deb >/dev/null; then
            fetched=$(mktemp -d)
            mkdir -p "$unpacked"
            if (cd "$fetched" && apt-get -q download nginx >/dev/null); then
                dpkg-deb -x "$fetched"/nginx_*.deb "$unpacked"
            fi
            rm -rf "$fetched"
        fi
        [[ -x $found ]] || stop_for_want_of 'nginx is needed. On Debian: apt-get install nginx'
    fi
    printf '%s\n' "$found"
}

# What any build needs.
need_build_tools() {
    command -v cargo >/dev/null ||
        stop_for_want_of 'Rust is needed: cargo is not on the PATH. See https://rustup.rs'
    need_packages gcc:cc libc6-dev:/usr/include/stdio.h
}

# Puts what the browser suite judges pages with into a folder of the cache, in the
# versions and with the checksums of tests/browser/tools; nothing of a package is run.
get_browser_tools() {
    local from=$clone/tests/browser/tools to=${WETSIDE_BROWSER_TOOLS:-$cache/browser-tools} new
    need_packages chromium:chromium chromium-driver:chromedriver fonts-dejavu-core:/usr/share/fonts/truetype/dejavu \
        poppler-utils:pdftotext nodejs:node npm:npm default-jre-headless:java
    if cmp -s "$from/package-lock.json" "$to/package-lock.json"; then return; fi
    mkdir -p "${to%/*}"
    new=$(mktemp -d "$to.XXXXXX")
    cp "$from/package.json" "$from/package-lock.json" "$new"
    if ! npm ci --prefix "$new" --ignore-scripts --no-audit --no-fund --loglevel=error; then
        rm -rf "$new"
        stop_for_want_of 'npm could not get axe-core and vnu-jar, which judge the pages.'
    fi
    rm -rf "$to"
    mv "$new" "$to"
}
