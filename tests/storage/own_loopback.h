#pragma once

#include <QFile>

#include <net/if.h>
#include <sched.h>
#include <sys/ioctl.h>
#include <sys/socket.h>
#include <unistd.h>

#include <cstring>

/// A network that nobody has but this process and those it starts: its loopback may fall silent, as a cable
/// does that is pulled, with nobody told that the line is gone.
namespace lapwright::tests {

/// Takes loopback up, or down: then whatever is sent is lost without a word. False if that is not allowed.
inline bool letLoopbackSpeak(bool speak)
{
    const int asked = ::socket(AF_INET, SOCK_DGRAM, 0);
    ifreq request{};
    std::strcpy(request.ifr_name, "lo");
    bool done = asked >= 0 && ::ioctl(asked, SIOCGIFFLAGS, &request) == 0;
    request.ifr_flags = static_cast<short>(speak ? request.ifr_flags | IFF_UP : request.ifr_flags & ~IFF_UP);
    done = done && ::ioctl(asked, SIOCSIFFLAGS, &request) == 0;
    ::close(asked);
    return done;
}

/// Leaves the network of the machine for one of its own; before the first thread. False where the system
/// allows that to nobody, as some containers do; then all stays as it was.
inline bool takeOwnLoopback()
{
    const auto user = ::geteuid();
    if (::unshare(user == 0 ? CLONE_NEWNET : CLONE_NEWUSER | CLONE_NEWNET) != 0)
        return false;
    if (user != 0) {
        QFile map("/proc/self/uid_map");
        if (map.open(QIODevice::WriteOnly))
            map.write(QByteArray::number(user) + ' ' + QByteArray::number(user) + " 1");
    }
    return letLoopbackSpeak(true);
}

} // namespace lapwright::tests
