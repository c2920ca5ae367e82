#pragma once

#include "measure/result.h"
#include "storage/database.h"

#include <QObject>

#include <exception>
#include <functional>
#include <memory>
#include <string>
#include <thread>
#include <utility>

namespace lapwright::model {

/// Work beside the window, in a thread and with a database connection of its own; one piece at a time. Its
/// owner must not go before what the work uses: make it the last member.
template <class Outcome>
class Beside {
public:
    Beside() = default;
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;
    Beside(Beside&&) = delete;
    Beside& operator=(Beside&&) = delete;
    /// Waits for what is under way.
    ~Beside() { wait(); }

    /// Does `work` on the shop's database at `address`, then calls `done` on the thread of `home`, unless
    /// that is gone. What went wrong with the database is an error of the outcome.
    void start(QObject& home, const std::string& address,
               std::function<Result<Outcome>(const storage::Database&)> work,
               std::function<void(Result<Outcome>&)> done)
    {
        wait();
        thread_ = std::thread([&home, address, work = std::move(work), done = std::move(done)] {
            const auto outcome = std::make_shared<Result<Outcome>>(on(address, work));
            QMetaObject::invokeMethod(
                &home, [outcome, done] { done(*outcome); }, Qt::QueuedConnection);
        });
    }

private:
    static Result<Outcome> on(const std::string& address,
                              const std::function<Result<Outcome>(const storage::Database&)>& work)
    {
        try {
            const auto database = storage::Database::open(address, storage::WhenMissing::Refuse);
            return database.ok() ? work(*database) : Result<Outcome>(database.errors());
        } catch (const std::exception& failure) {
            return Error{"", failure.what(), "a database that can be read and written"};
        }
    }
    void wait()
    {
        if (thread_.joinable())
            thread_.join();
    }

    std::thread thread_;
};

} // namespace lapwright::model
