#pragma once

#include <QTcpServer>
#include <QTcpSocket>
#include <QThread>
#include <QTimer>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <limits>
#include <random>

namespace lapwright::tests {

/// One connection through the link. It breaks in the middle of whatever is on its way once so many bytes went
/// through, either way.
class BrokenLine : public QObject {
    Q_OBJECT
public:
    BrokenLine(QTcpSocket* station, quint16 server, std::chrono::milliseconds delay, qint64 bytes,
               QObject* parent)
        : QObject(parent), station_(station), delay_(delay), left_(bytes)
    {
        station_->setParent(this);
        for (QTcpSocket* end : {station_, &server_}) {
            QTcpSocket* other = end == station_ ? &server_ : station_;
            connect(end, &QTcpSocket::readyRead, this, [this, end, other] { handOn(*end, *other); });
            connect(end, &QTcpSocket::disconnected, this, &BrokenLine::finish);
            connect(end, &QTcpSocket::errorOccurred, this, &BrokenLine::finish);
        }
        server_.connectToHost(QHostAddress::LocalHost, server);
    }

private:
    void handOn(QTcpSocket& from, QTcpSocket& to)
    {
        if (left_ <= 0)
            return;
        const QByteArray bytes = from.read(std::min(left_, from.bytesAvailable()));
        left_ -= bytes.size();
        const bool breaks = left_ <= 0;
        QTimer::singleShot(delay_, Qt::PreciseTimer, this, [this, &to, bytes, breaks] {
            to.write(bytes);
            to.flush();
            if (breaks)
                finish();
        });
    }
    void finish()
    {
        disconnect(&server_, nullptr, this, nullptr);
        disconnect(station_, nullptr, this, nullptr);
        station_->abort();
        server_.abort();
        deleteLater();
    }

    QTcpSocket* station_;
    QTcpSocket server_;
    std::chrono::milliseconds delay_;
    qint64 left_;
};

/// Stands between stations and their server on loopback, in a thread of its own: hands on each chunk a while
/// later, and breaks the connections that are made first, each after so many bytes as chance has it. Those
/// made later stay: a link on which every connection breaks lets nobody end a day.
class SlowAndBrokenLink {
public:
    SlowAndBrokenLink(quint16 server, std::chrono::milliseconds delay, int breaks, qint64 mostBytes)
        : breaks_(breaks), bytes_(1, mostBytes)
    {
        listener_.moveToThread(&thread_);
        QObject::connect(&listener_, &QTcpServer::newConnection, &listener_,
                         [this, server, delay] { takeOn(server, delay); });
        thread_.start();
        QMetaObject::invokeMethod(
            &listener_,
            [this] {
                if (!listener_.listen(QHostAddress::LocalHost))
                    qFatal("no port on loopback");
            },
            Qt::BlockingQueuedConnection);
    }
    SlowAndBrokenLink(const SlowAndBrokenLink&) = delete;
    SlowAndBrokenLink& operator=(const SlowAndBrokenLink&) = delete;
    SlowAndBrokenLink(SlowAndBrokenLink&&) = delete;
    SlowAndBrokenLink& operator=(SlowAndBrokenLink&&) = delete;
    ~SlowAndBrokenLink()
    {
        QMetaObject::invokeMethod(
            &listener_,
            [this] {
                listener_.close();
                for (BrokenLine* line : listener_.findChildren<BrokenLine*>())
                    delete line;
            },
            Qt::BlockingQueuedConnection);
        thread_.quit();
        thread_.wait();
    }

    [[nodiscard]] quint16 port() const { return listener_.serverPort(); }
    /// Connections that were made, most of them to break.
    [[nodiscard]] int connections() const { return connections_; }

private:
    void takeOn(quint16 server, std::chrono::milliseconds delay)
    {
        while (QTcpSocket* station = listener_.nextPendingConnection()) {
            const bool breaks = connections_++ < breaks_;
            const qint64 bytes = breaks ? bytes_(random_) : std::numeric_limits<qint64>::max();
            new BrokenLine(station, server, delay, bytes, &listener_);
        }
    }

    QThread thread_;
    QTcpServer listener_;
    std::mt19937 random_{8};
    int breaks_;
    std::uniform_int_distribution<qint64> bytes_;
    std::atomic<int> connections_ = 0;
};

} // namespace lapwright::tests
