/* Loaded ahead of a program (LD_PRELOAD): counts its calls that change the disk below one folder, and makes one of them
 * go wrong. LAPWRIGHT_FAULTS=KIND:NUMBER:FOLDER, where KIND is
 *   count  nothing goes wrong; the number of calls is written to standard error at the end
 *   kill   the program is killed instead of call NUMBER
 *   torn   half of what call NUMBER writes is written, then the program is killed
 *   full   call NUMBER and all after it find no space left
 *   error  call NUMBER finds an input/output error
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/types.h>
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

enum Outcome { GoesWell, Fails, IsTorn };

static enum Outcome next(void)
{
    const long number = ++calls;
    if (strcmp(kind, "full") == 0 && number >= wanted) {
        errno = ENOSPC;
        return Fails;
    }
    if (number != wanted || strcmp(kind, "count") == 0)
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
