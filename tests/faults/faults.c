/* Loaded ahead of a program (LD_PRELOAD): counts its calls that change the disk below one folder, and makes one of them
 * go wrong. LAPWRIGHT_FAULTS=KIND:NUMBER:FOLDER, where KIND is
 *   count  nothing goes wrong; the number of calls is written to standard error at the end
 *   kill   the program is killed instead of call NUMBER
 *   torn   half of what call NUMBER writes is written, then the program is killed
 *   full   call NUMBER and all after it find no space left
 *   error  call NUMBER finds an input/output error
 *   read   nothing below the folder can be changed: the medium is read-only
 *   clock  every call goes well, and the clock on the wall is NUMBER seconds behind
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/time.h>
#include <sys/types.h>
#include <time.h>
#include <unistd.h>

static char kind[16];
static char folder[4096];
static long wanted = -1;
static long calls = 0;

__attribute__((constructor)) static void begin(void)
{
    const char* given = getenv("LAPWRIGHT_FAULTS");
    if (given == NULL || sscanf(given, "%15[a-z]:%ld:%4095s", kind, &wanted, folder) != 3)
        kind[0] = '\0';
}

__attribute__((destructor)) static void end(void)
{
    if (strcmp(kind, "count") == 0)
        fprintf(stderr, "faults: %ld calls\n", calls);
}

static int below(const char* path)
{
    return kind[0] != '\0' && strncmp(path, folder, strlen(folder)) == 0;
}

static int belowFolder(int file)
{
    char link[64];
    char path[4096];
    if (kind[0] == '\0')
        return 0;
    snprintf(link, sizeof link, "/proc/self/fd/%d", file);
    const ssize_t size = readlink(link, path, sizeof path - 1);
    if (size < 0)
        return 0;
    path[size] = '\0';
    return below(path);
}

static int isReadOnly(void)
{
    return strcmp(kind, "read") == 0;
}

enum Outcome { GoesWell, Fails, IsTorn };

static enum Outcome next(void)
{
    const long number = ++calls;
    if (isReadOnly()) {
        errno = EROFS;
        return Fails;
    }
    if (strcmp(kind, "full") == 0 && number >= wanted) {
        errno = ENOSPC;
        return Fails;
    }
    if (number != wanted || strcmp(kind, "count") == 0 || strcmp(kind, "clock") == 0)
        return GoesWell;
    if (strcmp(kind, "kill") == 0)
        kill(getpid(), SIGKILL);
    if (strcmp(kind, "torn") == 0)
        return IsTorn;
    errno = EIO;
    return Fails;
}

#define REAL(name) ((__typeof__(&name))dlsym(RTLD_NEXT, #name))

ssize_t write(int file, const void* bytes, size_t size)
{
    const enum Outcome outcome = belowFolder(file) ? next() : GoesWell;
    if (outcome == Fails)
        return -1;
    const ssize_t done = REAL(write)(file, bytes, outcome == IsTorn ? size / 2 : size);
    if (outcome == IsTorn)
        kill(getpid(), SIGKILL);
    return done;
}

ssize_t pwrite64(int file, const void* bytes, size_t size, off64_t at)
{
    const enum Outcome outcome = belowFolder(file) ? next() : GoesWell;
    if (outcome == Fails)
        return -1;
    const ssize_t done = REAL(pwrite64)(file, bytes, outcome == IsTorn ? size / 2 : size, at);
    if (outcome == IsTorn)
        kill(getpid(), SIGKILL);
    return done;
}

ssize_t pwrite(int file, const void* bytes, size_t size, off_t at)
{
    return pwrite64(file, bytes, size, at);
}

static int allowed(int isBelow)
{
    if (!isBelow)
        return 1;
    const enum Outcome outcome = next();
    if (outcome == IsTorn)
        kill(getpid(), SIGKILL);
    return outcome == GoesWell;
}

int fsync(int file)
{
    return allowed(belowFolder(file)) ? REAL(fsync)(file) : -1;
}

int fdatasync(int file)
{
    return allowed(belowFolder(file)) ? REAL(fdatasync)(file) : -1;
}

int ftruncate64(int file, off64_t size)
{
    return allowed(belowFolder(file)) ? REAL(ftruncate64)(file, size) : -1;
}

int rename(const char* from, const char* to)
{
    return allowed(below(to)) ? REAL(rename)(from, to) : -1;
}

int renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned int flags)
{
    return allowed(below(to)) ? REAL(renameat2)(fromFolder, from, toFolder, to, flags) : -1;
}

int unlink(const char* path)
{
    return allowed(below(path)) ? REAL(unlink)(path) : -1;
}

int link(const char* from, const char* to)
{
    return allowed(below(to)) ? REAL(link)(from, to) : -1;
}

/* Whether a file may be opened so; on a read-only medium, to be read. */
static int mayOpen(const char* path, int flags)
{
    if (!isReadOnly() || !below(path) || ((flags & O_ACCMODE) == O_RDONLY && (flags & O_CREAT) == 0))
        return 1;
    errno = EROFS;
    return 0;
}

static mode_t modeIn(int flags, va_list rest)
{
    return (flags & O_CREAT) != 0 || (flags & O_TMPFILE) == O_TMPFILE ? va_arg(rest, mode_t) : 0;
}

int open64(const char* path, int flags, ...)
{
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = modeIn(flags, rest);
    va_end(rest);
    return mayOpen(path, flags) ? REAL(open64)(path, flags, mode) : -1;
}

int open(const char* path, int flags, ...)
{
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = modeIn(flags, rest);
    va_end(rest);
    return mayOpen(path, flags) ? REAL(open)(path, flags, mode) : -1;
}

int openat(int folderFile, const char* path, int flags, ...)
{
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = modeIn(flags, rest);
    va_end(rest);
    return mayOpen(path, flags) ? REAL(openat)(folderFile, path, flags, mode) : -1;
}

static long behind(void)
{
    return strcmp(kind, "clock") == 0 ? wanted : 0;
}

int clock_gettime(clockid_t clock, struct timespec* now)
{
    const int done = REAL(clock_gettime)(clock, now);
    if (clock == CLOCK_REALTIME)
        now->tv_sec -= behind();
    return done;
}

int gettimeofday(struct timeval* restrict now, void* restrict zone)
{
    const int done = REAL(gettimeofday)(now, zone);
    now->tv_sec -= behind();
    return done;
}
