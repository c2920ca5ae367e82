#pragma once

#include "storage/database.h"

#include <QObject>
#include <QString>
#include <QThread>
#include <QTimer>

#include <atomic>
#include <cstdint>
#include <memory>
#include <string>

namespace lapwright::model {

/// Sees what other stations do on the same database: a server says so at once, a file is asked several times
/// a second. A connection that is lost is made anew by itself, without the window ever waiting for it.
class DatabaseWatch : public QObject {
    Q_OBJECT

public:
    /// `address` is where `database` is.
    DatabaseWatch(const storage::Database& database, std::string address, QObject* parent);
    ~DatabaseWatch() override;
    DatabaseWatch(const DatabaseWatch&) = delete;
    DatabaseWatch& operator=(const DatabaseWatch&) = delete;
    DatabaseWatch(DatabaseWatch&&) = delete;
    DatabaseWatch& operator=(DatabaseWatch&&) = delete;

    /// Everything that was written so far is about to be read. Throws storage::StorageFailure.
    void catchUp();
    /// Looks whether anything was written since, and whether the database is there at all.
    void look();
    /// Why the database does not answer; empty: it does.
    [[nodiscard]] QString lost() const { return lost_; }

signals:
    void written();
    /// The connection was lost, or is there again.
    void lostChanged();

private:
    void lose(const QString& why);
    /// Asks in a thread of its own whether the database can be opened.
    void probe();
    void reconnect();

    const storage::Database& database_;
    std::string address_;
    std::int64_t seen_ = 0;
    QString lost_;
    QTimer timer_;
    std::unique_ptr<QThread> prober_;
    std::atomic<bool> answers_ = false;
};

} // namespace lapwright::model
