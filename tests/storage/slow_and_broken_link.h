#pragma once

#include <QPointer>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTimer>

#include <chrono>
#include <utility>

namespace lapwright::tests {

/// Stands between stations and their server on loopback: hands on each chunk a while later, and cuts every
/// connection whenever so many chunks have gone through. Lives in the event loop of the test.
class SlowAndBrokenLink : public QObject {
    Q_OBJECT
public:
    SlowAndBrokenLink(quint16 server, std::chrono::milliseconds delay, int chunksToTheCut)
        : server_(server), delay_(delay), chunksToTheCut_(chunksToTheCut)
    {
        connect(&listener_, &QTcpServer::newConnection, this, &SlowAndBrokenLink::join);
        if (!listener_.listen(QHostAddress::LocalHost))
            qFatal("no port on loopback");
    }

    [[nodiscard]] quint16 port() const { return listener_.serverPort(); }
    [[nodiscard]] int cuts() const { return cuts_; }

private:
    void join()
    {
        auto* station = listener_.nextPendingConnection();
        auto* server = new QTcpSocket(station);
        server->connectToHost(QHostAddress::LocalHost, server_);
        handOn(station, server);
        handOn(server, station);
        connect(server, &QTcpSocket::disconnected, station, &QTcpSocket::disconnectFromHost);
        connect(station, &QTcpSocket::disconnected, station, &QObject::deleteLater);
        stations_.append(station);
    }
    void handOn(QTcpSocket* from, QTcpSocket* to)
    {
        connect(from, &QTcpSocket::readyRead, to, [this, from, to] {
            QTimer::singleShot(delay_, Qt::PreciseTimer, to,
                               [to, bytes = from->readAll()] { to->write(bytes); });
            if (++chunks_ % chunksToTheCut_ == 0)
                QTimer::singleShot(0, this, &SlowAndBrokenLink::cut);
        });
    }
    void cut()
    {
        ++cuts_;
        for (const QPointer<QTcpSocket>& station : std::exchange(stations_, {}))
            if (station)
                station->abort();
    }

    quint16 server_;
    std::chrono::milliseconds delay_;
    int chunksToTheCut_;
    int chunks_ = 0;
    int cuts_ = 0;
    QTcpServer listener_;
    QList<QPointer<QTcpSocket>> stations_;
};

} // namespace lapwright::tests
