# What the scripts of this folder share. Read with `source`, never run.
# shellcheck shell=bash

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
    for folder in /usr/lib/postgresql/*/bin "$(dirname "$(command -v postgres || true)")"; do
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
